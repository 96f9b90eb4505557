using Companion.Engine.Proofs;

namespace Companion.Engine.Rules;

/// <summary>
/// XYZ-wing. Finds a pivot with the candidates xyz and two pincers that it sees, one with xz and one with yz; z goes from the
/// cells that see all three.
/// </summary>
/// <remarks>
/// <para>
/// Why it holds: if the pivot is x the first pincer is z, if it is y the second is, and otherwise it is z itself. So one of the
/// three is z.
/// </para>
/// <code>
/// yz  .  .  | .  .  .
/// xyz -  -  | .  xz .      pivot xyz, pincers xz and yz:
/// .   .  .  | .  .  .      z goes from -, which see all three.
/// </code>
/// <para>
/// All of them: one for each pivot, z and pair of pincers, by pivot, z, first pincer (the one with the smaller of x and y) and
/// second pincer. Three cells in one house are a naked triple and are left to <see cref="NakedTriple"/>. It rests on the absent
/// candidates of the three cells.
/// </para>
/// <para>Source: common practice.</para>
/// </remarks>
public sealed class XYZWing : IRule
{
    /// <inheritdoc/>
    public RuleId Id { get; } = new("xyz-wing");

    /// <inheritdoc/>
    public void Find(Board board, Findings found)
    {
        var bivalue = board.CellsWith(2);
        foreach (var pivot in board.CellsWith(3))
        {
            foreach (var z in board[pivot])
            {
                var near = bivalue & pivot.Peers & board[z];
                var x = board[pivot].Without(z).First;
                var y = board[pivot].Without(z).Without(x).First;
                foreach (var first in near & board[x])
                {
                    foreach (var second in near & board[y] - first.Peers) // Pincers that see each other: all in one house.
                    {
                        var gone = board[z] & pivot.Peers & first.Peers & second.Peers;
                        if (!gone.IsEmpty && !found.Add(new Wing(pivot, first, second, x, y, z).Deduce(Id, board, gone)))
                            return;
                    }
                }
            }
        }
    }
}
