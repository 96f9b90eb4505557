using System.Collections.Immutable;
using System.Globalization;

namespace Companion.Sight.Tests.Boards;

/// <summary>The digits and marks of a board.</summary>
internal static class Lettering
{
    /// <summary>A digit, a mark or a line through a mark.</summary>
    /// <param name="Cell">The cell's index.</param>
    /// <param name="Mark">The mark's index in the cell; -1 for the big digit.</param>
    /// <param name="Drawn">How it is drawn.</param>
    /// <param name="X">Its middle.</param>
    /// <param name="Y">Its middle.</param>
    /// <param name="Size">That of the letter.</param>
    public readonly record struct Piece(int Cell, int Mark, Drawn Drawn, float X, float Y, float Size);

    public static IEnumerable<Piece> Of(BoardStyle style, ImmutableArray<DrawnCell> cells)
    {
        for (var index = 0; index < cells.Length; index++)
        {
            var (x, y) = ((index % 9 + 0.5f) * style.Cell, (index / 9 + 0.5f) * style.Cell);
            if (cells[index].Digit > 0)
                yield return new(index, -1, Digit(style, cells[index], x, y), x, y, style.DigitSize * style.Cell);
            for (var mark = 0; mark < cells[index].Marks.Length; mark++)
            {
                var (markX, markY) = Place(style, cells[index].Marks, mark, x, y);
                foreach (var drawn in Mark(style, cells[index].Marks[mark], mark, markX, markY))
                    yield return new(index, mark, drawn, markX, markY, style.MarkSize * style.Cell);
            }
        }
    }

    private static Drawn.Letter Digit(BoardStyle style, DrawnCell cell, float x, float y) => new(
        x, y, style.DigitSize * style.Cell, style.DigitFont,
        cell.IsGiven ? style.GivenWeight : style.EnteredWeight,
        cell.IsGiven ? style.Colours.Given : style.Colours.Entered,
        cell.Digit.ToString(CultureInfo.InvariantCulture));

    private static (float X, float Y) Place(BoardStyle style, ImmutableArray<DrawnMark> marks, int index, float x, float y)
    {
        var digit = marks[index].Digit;
        var (dx, dy) = style.Marks switch
        {
            MarkPlaces.Corners => ((index % 2 - 0.5f) * 0.62f, (index / 2 % 2 - 0.5f) * 0.58f),
            MarkPlaces.CentreRow => ((index - (marks.Length - 1) / 2f) * Math.Min(0.66f * style.MarkSize, 0.22f), 0),
            _ => (((digit - 1) % 3 - 1) * 0.3f, ((digit - 1) / 3 - 1) * 0.3f),
        };
        return (x + dx * style.Cell, y + dy * style.Cell);
    }

    private static IEnumerable<Drawn> Mark(BoardStyle style, DrawnMark mark, int index, float x, float y)
    {
        var size = style.MarkSize * style.Cell;
        yield return new Drawn.Letter(x, y, size, style.MarkFont, 400, style.Colours.Mark, mark.Digit.ToString(CultureInfo.InvariantCulture));
        if (mark.IsStruck)
        {
            // In a row a line that reached farther would go through the neighbours too.
            var (reach, rise) = ((style.Marks == MarkPlaces.CentreRow ? 0.3f : 0.4f) * size, style.Strike == Strike.Diagonal ? 0.42f * size : 0);
            yield return new Drawn.Stroke(
                ((FormattableString)$"M{x - reach} {y + rise}L{x + reach} {y - rise}").ToString(CultureInfo.InvariantCulture),
                index % 2 == 0 ? style.Colours.Mark : style.Colours.Given, Math.Max(1, 0.07f * size));
        }
    }
}
