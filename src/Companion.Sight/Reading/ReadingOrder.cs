namespace Companion.Sight.Reading;

/// <summary>The order in which the marks of a cell are read.</summary>
internal static class ReadingOrder
{
    // Of the height of the higher one: marks whose middles are nearly level stand in one line.
    private const float Level = 0.5f;

    /// <summary>Line by line from the top, each from the left.</summary>
    /// <param name="marks">The marks of a cell.</param>
    public static IEnumerable<Sign> Of(IEnumerable<Sign> marks) => Of(marks, mark => (mark.X, mark.Y, mark.Height));

    /// <summary>Line by line from the top, each from the left.</summary>
    /// <param name="marks">The marks of a cell, as they were read.</param>
    public static IEnumerable<MarkReading> Of(IEnumerable<MarkReading> marks) => Of(marks, mark => (mark.X, mark.Y, mark.Height));

    private static IEnumerable<T> Of<T>(IEnumerable<T> marks, Func<T, (float X, float Y, float Height)> place)
    {
        var lines = new List<List<(T Mark, float X, float Y, float Height)>>();
        foreach (var mark in marks.Select(mark => (Mark: mark, place(mark).X, place(mark).Y, place(mark).Height)).OrderBy(mark => mark.Y))
        {
            if (lines.Count > 0 && mark.Y - lines[^1][0].Y < Level * Math.Max(mark.Height, lines[^1][0].Height))
                lines[^1].Add(mark);
            else
                lines.Add([mark]);
        }

        return lines.SelectMany(line => line.OrderBy(mark => mark.X)).Select(mark => mark.Mark);
    }
}
