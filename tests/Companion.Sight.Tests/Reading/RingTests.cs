using SkiaSharp;

namespace Companion.Sight.Tests.Reading;

/// <summary>Marks in the corners of a cell, over a ring that crosses them.</summary>
public sealed class RingTests
{
    private const int Ringed = 40;

    [Theory]
    [InlineData("#204030", "#a02040")]
    [InlineData("#909090", "#000000")]
    [InlineData("#303038", "#383030")]
    public void Marks_that_a_ring_crosses_are_read_and_held_back(string ring, string marks)
    {
        var reading = BoardReader.Read(Drawn(SKColor.Parse(ring), SKColor.Parse(marks)), SketchedBoard.Place, GlyphReader.Standard, Lessons.None);

        Assert.Equal([2, 3, 4, 7], reading.Cells[Ringed].Marks.Select(mark => mark.Digit.Value));
        Assert.True(reading.Cells[Ringed].IsUnsure);
        Assert.DoesNotContain(reading.Cells, cell => cell.Cell.Index != Ringed && cell.IsUnsure);
    }

    private static Frame Drawn(SKColor ring, SKColor marks) => SketchedBoard.Of(canvas =>
    {
        using var font = SketchedBoard.Font("work-sans", 21);
        using var line = new SKPaint { Color = ring, IsStroke = true, StrokeWidth = 2, IsAntialias = true };
        using var ink = new SKPaint { Color = marks, IsAntialias = true };
        for (var cell = 0; cell < 81; cell += 8)
        {
            var (x, y) = (SketchedBoard.Margin + (cell % 9 + 0.5f) * SketchedBoard.Cell, SketchedBoard.Margin + (cell / 9 + 0.5f) * SketchedBoard.Cell);
            if (cell == Ringed)
                canvas.DrawCircle(x, y, 0.42f * SketchedBoard.Cell, line);
            foreach (var (text, dx, dy) in (ReadOnlySpan<(string, float, float)>)[("2", -25, -23), ("3", 25, -23), ("4", -25, 23), ("7", 25, 23)])
                canvas.DrawText(text, x + dx, y + dy + 7, SKTextAlign.Center, font, ink);
        }
    });
}
