using System.Collections.Immutable;
using System.Globalization;

namespace Companion.Sight.Tests.Boards;

/// <summary>The digits and marks of a board.</summary>
internal static class Lettering
{
    public static IEnumerable<Drawn> Of(BoardStyle style, ImmutableArray<DrawnCell> cells)
    {
        for (var index = 0; index < cells.Length; index++)
        {
            var (x, y) = ((index % 9 + 0.5f) * style.Cell, (index / 9 + 0.5f) * style.Cell);
            if (cells[index].Digit > 0)
                yield return Digit(style, cells[index], x, y);
            for (var mark = 0; mark < cells[index].Marks.Length; mark++)
            {
                foreach (var drawn in Mark(style, cells[index].Marks, mark, x, y))
                    yield return drawn;
            }
        }
    }

    private static Drawn.Letter Digit(BoardStyle style, DrawnCell cell, float x, float y) => new(
        x, y, style.DigitSize * style.Cell, style.DigitFont,
        cell.IsGiven ? style.GivenWeight : style.EnteredWeight,
        cell.IsGiven ? style.Colours.Given : style.Colours.Entered,
        cell.Digit.ToString(CultureInfo.InvariantCulture));

    private static IEnumerable<Drawn> Mark(BoardStyle style, ImmutableArray<DrawnMark> marks, int index, float x, float y)
    {
        var (mark, size) = (marks[index], style.MarkSize * style.Cell);
        var (dx, dy) = style.Marks switch
        {
            MarkPlaces.Corners => ((index % 2 - 0.5f) * 0.62f, (index / 2 % 2 - 0.5f) * 0.58f),
            MarkPlaces.CentreRow => ((index - (marks.Length - 1) / 2f) * Math.Min(0.66f * style.MarkSize, 0.22f), 0),
            _ => (((mark.Digit - 1) % 3 - 1) * 0.3f, ((mark.Digit - 1) / 3 - 1) * 0.3f),
        };
        (x, y) = (x + dx * style.Cell, y + dy * style.Cell);
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
