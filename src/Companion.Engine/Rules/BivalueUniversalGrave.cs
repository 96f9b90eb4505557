using System.Numerics;
using Companion.Engine.Proofs;

namespace Companion.Engine.Rules;

/// <summary>
/// Bivalue universal grave plus one. Finds a board on which each open cell has two candidates, but one that has three, and each
/// digit two places in each house that lacks it, but one digit of that cell three in its houses; this digit is placed there.
/// </summary>
/// <remarks>
/// <para>
/// Why it holds: without this digit in the cell, every cell would have two candidates and every digit two places in each
/// house. However the cells were filled then, each could take its other candidate, for a second solution. But the puzzle has one.
/// </para>
/// <code>
/// 12  = | 12  =      Here, cut down to two rows: 1 and 2 come twice in each row,
/// 12+ = | 12  =      each column and each block. Only the third candidate of
///                    r2c1, +, keeps the grid from having two solutions.
/// </code>
/// <para>
/// All of them: at most one on a board. It rests on every absent candidate of every open cell.
/// </para>
/// <para>Source: common practice.</para>
/// </remarks>
public sealed class BivalueUniversalGrave : IRule
{
    /// <inheritdoc/>
    public RuleId Id { get; } = new("bivalue-universal-grave");

    /// <inheritdoc/>
    public bool AssumesOneSolution => true;

    /// <inheritdoc/>
    public void Find(Board board, Findings found)
    {
        var (floor, roof) = (board.CellsWith(2), board.CellsWith(3));
        if (roof.Count != 1 || (floor | roof) != board.Open)
            return;
        foreach (var extra in board[roof.First])
        {
            if (!ComeInTwos(board, new(roof.First, extra)))
                continue;
            found.Add(new Deduction
            {
                Rule = Id,
                Cells = PatternCell.Each((Role.Floor, floor), (Role.Roof, roof)),
                Digits = board.Candidates.Digits,
                RestsOn = CandidateSet.Of(board.Open, DigitSet.All) - board.Candidates,
                Places = CandidateSet.Of(roof, extra),
                AssumesOneSolution = true,
            });
            return;
        }
    }

    // Whether each digit has two places or none in each house, if this candidate is not counted.
    private static bool ComeInTwos(Board board, Candidate extra)
    {
        foreach (var digit in Digit.All)
        {
            var places = digit == extra.Digit ? board[digit].Without(extra.Cell) : board[digit];
            foreach (var house in HouseSet.All)
            {
                if (BitOperations.PopCount((uint)places.PlacesIn(house)) is not (0 or 2))
                    return false;
            }
        }

        return true;
    }
}
