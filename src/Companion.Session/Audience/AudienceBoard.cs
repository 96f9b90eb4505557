using Companion.Engine;
using Companion.Session.State;

namespace Companion.Session.Audience;

/// <summary>
/// The board as the presenter wrote it, as text: many are sent it, and so it is small. A position without marks takes some 200
/// bytes, one full of candidate lists about 1,000.
/// </summary>
/// <param name="Givens">81 characters, row by row: the given digit, or <c>.</c> where none was given.</param>
/// <param name="Placed">81 characters, row by row: the digit that the presenter placed, or <c>.</c></param>
/// <param name="Lists">The candidate lists: <c>r1c1:248 r4c7:13</c>, in reading order; empty for none.</param>
/// <param name="BlockMarks">The digits written as block marks, in the same form.</param>
/// <param name="Struck">The candidates that the presenter struck, in the same form.</param>
public sealed record AudienceBoard(string Givens, string Placed, string Lists, string BlockMarks, string Struck)
{
    /// <summary>The board of a grid.</summary>
    /// <param name="grid">What is written.</param>
    public static AudienceBoard Of(Grid grid)
    {
        ArgumentNullException.ThrowIfNull(grid);
        return new(
            Digits(cell => grid.Givens.Contains(cell) ? grid.DigitAt(cell) : null),
            Digits(cell => grid.Givens.Contains(cell) ? null : grid.DigitAt(cell)),
            Marks(cell => grid.CellMarks[cell]),
            Marks(grid.BlockMarks.In),
            Marks(cell => grid.Struck[cell]));
    }

    private static string Digits(Func<Cell, Digit?> digitAt) =>
        string.Concat(CellSet.All.Select(cell => digitAt(cell)?.ToString() ?? "."));

    private static string Marks(Func<Cell, DigitSet> marksIn) => string.Join(' ', CellSet.All
        .Select(cell => (Cell: cell, Digits: marksIn(cell)))
        .Where(marks => !marks.Digits.IsEmpty)
        .Select(marks => $"{marks.Cell}:{marks.Digits}"));
}
