using Companion.Engine.Proofs;

namespace Companion.Engine.Rules;

/// <summary>
/// XY-wing. Finds a pivot with the candidates xy and two pincers that it sees, one with xz and one with yz; z goes from the cells
/// that see both pincers.
/// </summary>
/// <remarks>
/// <para>Why it holds: if the pivot is x the first pincer is z, if it is y the second is. So one of the pincers is z.</para>
/// <code>
/// .  .  .  | .  .  .
/// .  xy .  | .  xz .      pivot xy, pincers xz and yz:
/// .  .  .  | .  .  .      z goes from -, which sees both.
/// ---------+---------
/// .  yz .  | .  -  .
/// </code>
/// <para>
/// All of them: one for each pivot and pair of pincers, by pivot, first pincer (the one with the smaller digit of the pivot) and
/// second pincer. Three cells in one house are a naked triple and are left to <see cref="NakedTriple"/>. It rests on the absent
/// candidates of the three cells.
/// </para>
/// <para>Source: common practice.</para>
/// </remarks>
public sealed class XYWing : IRule
{
    /// <inheritdoc/>
    public RuleId Id { get; } = new("xy-wing");

    /// <inheritdoc/>
    public void Find(Board board, Findings found)
    {
        var bivalue = board.CellsWith(2);
        foreach (var pivot in bivalue)
        {
            var near = bivalue & pivot.Peers;
            var x = board[pivot].First;
            var y = board[pivot].Without(x).First;
            foreach (var first in near & board[x] - board[y])
            {
                var z = board[first].Without(x).First;
                foreach (var second in near & board[y] & board[z] - first.Peers) // Pincers that see each other: all in one house.
                {
                    var gone = board[z] & first.Peers & second.Peers;
                    if (!gone.IsEmpty && !found.Add(new Wing(pivot, first, second, x, y, z).Deduce(Id, board, gone)))
                        return;
                }
            }
        }
    }
}
