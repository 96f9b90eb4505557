using System.Collections.Immutable;
using Companion.Engine;
using SkiaSharp;

namespace Companion.Sight.Tests.Reading;

/// <summary>A board of 720 pixels with the marks 1 to 4 in the corners of 24 cells, each a little differently placed between pixels.</summary>
public sealed class SiblingsTests
{
    private const int Margin = SketchedBoard.Margin, Cell = SketchedBoard.Cell, Marked = 24;

    [Theory]
    [InlineData(5, 2, true)]
    [InlineData(11, 4, false)]
    [InlineData(0, 1, false)]
    public void A_line_through_one_of_many_marks_is_found(int cell, int digit, bool isLevel)
    {
        var reading = BoardReader.Read(Drawn(cell, digit, isLevel), SketchedBoard.Place, GlyphReader.Standard, Lessons.None);

        for (var index = 0; index < Marked; index++)
        {
            Assert.Equal([1, 2, 3, 4], reading.Cells[index].Marks.Select(mark => mark.Digit.Value));
            Assert.Equal(index == cell ? [digit] : [], reading.Cells[index].Marks.Where(mark => mark.IsStruck).Select(mark => mark.Digit.Value));
        }
    }

    [Fact]
    public void What_is_surely_read_as_something_else_than_its_like_is_held_back()
    {
        var frame = Drawn(struck: -1, 0, isLevel: false);
        var four = BoardReader.Read(frame, SketchedBoard.Place, GlyphReader.Standard, Lessons.None).Cells[7].Marks[3].Glyph;

        var reading = BoardReader.Read(frame, SketchedBoard.Place, glyphs => Misread(glyphs, four), around: null);

        Assert.True(reading.Cells[7].IsUnsure);
        Assert.InRange(reading.Cells.Count(cell => cell.IsUnsure), 1, 3);
    }

    [Theory]
    [InlineData(17)]
    [InlineData(23)]
    [InlineData(25)]
    public void Marks_of_another_size_are_not_doubted(float size)
    {
        var reading = BoardReader.Read(Drawn(struck: -1, 0, isLevel: false, size), SketchedBoard.Place, GlyphReader.Standard, Lessons.None);

        for (var index = 0; index < Marked; index++)
        {
            Assert.Equal([1, 2, 3, 4], reading.Cells[index].Marks.Select(mark => mark.Digit.Value));
            Assert.False(reading.Cells[index].IsUnsure);
        }
    }

    private static ImmutableArray<GlyphReading> Misread(IReadOnlyList<GlyphImage> glyphs, GlyphImage wrong)
    {
        var readings = GlyphReader.Standard.Read(glyphs);
        return [.. readings.Select((reading, index) => glyphs[index] == wrong ? new GlyphReading(Digit.Of(1), 1) : reading)];
    }

    // The last cell may have its marks at another size.
    private static Frame Drawn(int struck, int digit, bool isLevel, float last = 20) => SketchedBoard.Of(canvas =>
    {
        using var font = SketchedBoard.Font("work-sans", 20);
        using var ink = new SKPaint { Color = SKColors.Black, IsAntialias = true, StrokeWidth = 1.6f };
        for (var cell = 0; cell < Marked; cell++)
        {
            font.Size = cell == Marked - 1 ? last : 20;
            for (var mark = 1; mark <= 4; mark++)
            {
                var x = Margin + cell % 9 * Cell + (mark % 2 == 1 ? 20 : 60) + cell * 0.13f;
                var y = Margin + cell / 9 * Cell + (mark <= 2 ? 20 : 60) + cell * 0.07f;
                canvas.DrawText(mark.ToString(System.Globalization.CultureInfo.InvariantCulture), x, y + 7, SKTextAlign.Center, font, ink);
                if (cell == struck && mark == digit)
                    canvas.DrawLine(x - 9, y + (isLevel ? 0 : 8), x + 9, y - (isLevel ? 0 : 8), ink);
            }
        }
    });
}
