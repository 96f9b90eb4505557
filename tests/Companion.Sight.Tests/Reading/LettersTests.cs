using System.Globalization;
using Companion.Engine;
using SkiaSharp;

namespace Companion.Sight.Tests.Reading;

/// <summary>A board of big digits, each several times, and signs among them that a network may take for digits.</summary>
public sealed class LettersTests
{
    [Theory]
    [InlineData("&", 8)]
    [InlineData("S", 5)]
    [InlineData("Z", 2)]
    public void A_letter_that_is_read_as_a_digit_is_held_back(string letter, int like)
    {
        var frame = Drawn(letter);
        var glyph = BoardReader.Read(frame, SketchedBoard.Place, GlyphReader.Standard, Lessons.None).Cells[40].Glyph;

        var reading = BoardReader.Read(frame, SketchedBoard.Place, glyphs =>
            [.. GlyphReader.Standard.Read(glyphs).Select((reading, index) => glyphs[index] == glyph ? new(Digit.Of(like), 1) : reading)], around: null);

        Assert.True(reading.Cells[40].IsUnsure);
        Assert.Equal(1, reading.Cells.Count(cell => cell.IsUnsure));
    }

    private static Frame Drawn(string letter) => SketchedBoard.Of(canvas =>
    {
        using var font = SketchedBoard.Font("work-sans", 46);
        using var ink = new SKPaint { Color = SKColors.Black, IsAntialias = true };
        for (var cell = 0; cell < 81; cell += 2)
        {
            var text = cell == 40 ? letter : (cell % 9 + 1).ToString(CultureInfo.InvariantCulture);
            canvas.DrawText(text, SketchedBoard.Margin + cell % 9 * SketchedBoard.Cell + 40, SketchedBoard.Margin + cell / 9 * SketchedBoard.Cell + 57, SKTextAlign.Center, font, ink);
        }
    });
}
