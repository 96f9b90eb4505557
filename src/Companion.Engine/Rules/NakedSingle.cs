using Companion.Engine.Proofs;

namespace Companion.Engine.Rules;

/// <summary>
/// Naked single. Finds every open cell in which one candidate is left. Why it holds: a cell holds a digit, and every other is
/// gone. All instances: one for each such cell.
/// <code>
/// . . . | . 5 .      r1c1 sees 2 3 4 6 7 8 9 and 5:
/// r1c1 can only be 1.
/// </code>
/// </summary>
public sealed class NakedSingle : IRule
{
    /// <inheritdoc/>
    public RuleId Id { get; } = new("naked-single");

    /// <inheritdoc/>
    public void Find(Board board, Findings found)
    {
        foreach (var cell in board.Open)
        {
            var digits = board[cell];
            if (digits.Count != 1)
                continue;
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
