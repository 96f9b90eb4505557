using Companion.Engine;
using Companion.Session.State;
using Companion.Sight;

namespace Companion.Server.Tests.Live.Following;

/// <summary>Readings as a reader makes them of a screen that shows a grid.</summary>
internal static class Readings
{
    /// <summary>A reading of a grid: block marks in the corners, lists side by side in the middle.</summary>
    public static BoardReading Of(Grid grid) => new([.. CellSet.All.Select(cell => Of(grid, cell))]);

    /// <summary>The reading with one cell read otherwise.</summary>
    public static BoardReading With(this BoardReading reading, string name, Func<CellReading, CellReading> change)
    {
        var cell = Cell.Parse(name);
        return reading with { Cells = reading.Cells.SetItem(cell.Index, change(reading[cell])) };
    }

    /// <summary>A cell in which a digit was read.</summary>
    public static CellReading Digit(Cell cell, int digit, float certainty = 1) =>
        new(cell, Engine.Digit.Of(digit), IsGiven: false, Glyph(digit), [], certainty);

    /// <summary>A mark.</summary>
    public static MarkReading Mark(int digit, float x, float y, bool isStruck = false) =>
        new(Engine.Digit.Of(digit), x, y, Height: 0.2f, isStruck, Certainty: 1, Glyph(digit));

    /// <summary>Some image of a digit, of which each has its own.</summary>
    public static GlyphImage Glyph(int digit) =>
        new([.. Enumerable.Range(0, GlyphImage.Side * GlyphImage.Side).Select(at => at % 10 == digit ? 1f : 0f)]);

    private static CellReading Of(Grid grid, Cell cell)
    {
        if (grid.DigitAt(cell) is { } digit)
            return Digit(cell, digit.Value) with { IsGiven = grid.Givens.Contains(cell) };
        var corners = grid.BlockMarks.In(cell).Select((mark, at) => Mark(mark.Value, at % 2 == 0 ? 0.15f : 0.85f, at < 2 ? 0.15f : 0.85f));
        var list = grid.CellMarks[cell];
        var middle = list.Select((mark, at) => Mark(mark.Value, 0.5f + 0.15f * (at - (list.Count - 1) / 2f), 0.5f, grid.Struck[cell].Contains(mark)));
        return new(cell, null, null, null, [.. corners, .. middle], Certainty: 1);
    }
}
