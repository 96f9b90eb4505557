using Companion.Engine.Proofs;

namespace Companion.Engine.Rules;

/// <summary>
/// Unique rectangle with an extra digit. Finds four cells in two rows, two columns and two blocks that share two candidates, and
/// in two or three of them the same third one and no other; the third digit goes from the cells that see all its places there.
/// </summary>
/// <remarks>
/// <para>
/// Why it holds: if the third digit stood in none of the four cells, they would hold the two digits crosswise, and the digits
/// could be exchanged. But the puzzle has one solution.
/// </para>
/// <code>
/// 58 . . | 583 . . | . . .      Rows 1 and 2, columns 1 and 4: 3 stands in r1c4 or
/// 58 . . | 583 . . | . . .      r2c4, or 5 and 8 could be exchanged.
/// .  . . | -   - - | . . .      3 goes from -, and from the rest of column 4
/// -------+---------+------      and block 2.
/// .  . . | -   . . | . . .
/// </code>
/// <para>
/// All of them: one for each rectangle, by rows, then by columns. Both digits stand in all four cells, the third in two or three,
/// side by side or not, in one block or in two. It rests on the other digits' absence from the four, but not on that of the third
/// from a cell that all removed cells see.
/// </para>
/// <para>Source: common practice.</para>
/// </remarks>
public sealed class UniqueRectangleWithExtraDigit : IRule
{
    /// <inheritdoc/>
    public RuleId Id { get; } = new("unique-rectangle-with-extra-digit");

    /// <inheritdoc/>
    public bool AssumesOneSolution => true;

    /// <inheritdoc/>
    public void Find(Board board, Findings found)
    {
        foreach (var rectangle in Rectangle.All)
        {
            if (!rectangle.HasPair(board, out var pair, out var floor) || floor.Count > 2)
                continue;
            var roof = rectangle.Cells - floor;
            var extras = board[roof.First] - pair;
            if (extras.Count != 1 || !AllHave(roof, board[roof.First], board))
                continue;
            var gone = board[extras.First] & roof.CommonPeers;
            if (!gone.IsEmpty && !found.Add(Deduce(pair, extras.First, floor, roof, gone)))
                return;
        }
    }

    private static bool AllHave(CellSet cells, DigitSet digits, Board board)
    {
        foreach (var cell in cells)
        {
            if (board[cell] != digits)
                return false;
        }

        return true;
    }

    private Deduction Deduce(DigitSet pair, Digit extra, CellSet floor, CellSet roof, CellSet gone) => new()
    {
        Rule = Id,
        Cells = PatternCell.Each((Role.Floor, floor), (Role.Roof, roof)),
        Digits = pair.With(extra),
        RestsOn = CandidateSet.Of(floor | roof, ~pair.With(extra)) | CandidateSet.Of(floor - gone.CommonPeers, extra),
        Removes = CandidateSet.Of(gone, extra),
        AssumesOneSolution = true,
    };
}
