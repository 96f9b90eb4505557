using Companion.Engine.Proofs;

namespace Companion.Engine.Rules;

/// <summary>Full house. Finds a house with one open cell left, and places the digit that the house lacks.</summary>
/// <remarks>
/// <para>Why it holds: the house holds every digit, eight of them stand elsewhere in it.</para>
/// <code>
/// 1 2 3 |            The block lacks 9,
/// 4 5 6 |            and # is its last open cell.
/// 7 8 # |
/// </code>
/// <para>
/// All of them: one for each such house, blocks first, then rows, then columns; a cell that is the last of two houses counts
/// twice. It rests on no absent candidate: the filled cells say all.
/// </para>
/// <para>Source: common practice.</para>
/// </remarks>
public sealed class FullHouse : IRule
{
    /// <inheritdoc/>
    public RuleId Id { get; } = new("full-house");

    /// <inheritdoc/>
    public void Find(Board board, Findings found)
    {
        foreach (var house in Geometry.BlocksFirst)
        {
            var last = house.Cells & board.Open;
            if (last.Count != 1)
                continue;
            var cell = last.First;
            var digits = board[cell];
            if (digits.IsEmpty) // A wrong digit elsewhere took it away.
                continue;
            var more = found.Add(new Deduction
            {
                Rule = Id,
                Cells = [new(cell, Role.Single)],
                Houses = HouseSet.Of(house),
                Digits = digits,
                Places = CandidateSet.Of(last, digits),
            });
            if (!more)
                return;
        }
    }
}
