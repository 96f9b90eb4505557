using Companion.Engine.Proofs;

namespace Companion.Engine.Rules;

/// <summary>Naked single. Finds an open cell with one candidate left, and places it.</summary>
/// <remarks>
/// <para>Why it holds: a cell holds a digit, and the eight others are gone from it.</para>
/// <code>
/// # . . | . 5 .      The cell # sees 2 3 4 6 7 8 9 and 5:
/// . 2 3 | . . .      only 1 is left for it.
/// 4 . 6 | . . .
/// ------+------
/// 7 . . | . . .
/// 8 . . | . . .
/// 9 . . | . . .
/// </code>
/// <para>All of them: one for each such cell, in reading order. It rests on the eight absent candidates of the cell.</para>
/// <para>Source: common practice.</para>
/// </remarks>
public sealed class NakedSingle : IRule
{
    /// <inheritdoc/>
    public RuleId Id { get; } = new("naked-single");

    /// <inheritdoc/>
    public void Find(Board board, Findings found)
    {
        foreach (var cell in board.CellsWith(1))
        {
            var digits = board[cell];
            var more = found.Add(new Deduction
            {
                Rule = Id,
                Cells = [new(cell, Role.Single)],
                Digits = digits,
                RestsOn = CandidateSet.Of(CellSet.Of(cell), ~digits),
                Places = CandidateSet.Of(CellSet.Of(cell), digits),
            });
            if (!more)
                return;
        }
    }
}
