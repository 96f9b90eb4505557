using System.Globalization;
using SkiaSharp;

namespace Companion.Sight.Tests.Reading;

/// <summary>Marks in the corners of 24 cells, and one digit in the middle of each of the others.</summary>
public sealed class HeightsTests
{
    private const int Marked = 24;

    [Fact]
    public void Digits_that_stand_alone_are_big_though_half_of_them_are_little_higher_than_marks()
    {
        var reading = Read(cell => cell % 2 == 0 ? 27 : 50);

        for (var cell = 0; cell < 81; cell++)
        {
            Assert.Equal(cell < Marked ? [1, 2, 3, 4] : [], reading.Cells[cell].Marks.Select(mark => mark.Digit.Value));
            Assert.Equal(cell < Marked ? null : cell % 9 + 1, reading.Cells[cell].Digit?.Value);
        }
    }

    private static BoardReading Read(Func<int, float> size) => BoardReader.Read(
        SketchedBoard.Of(canvas =>
        {
            using var font = SketchedBoard.Font("work-sans", 20);
            using var ink = new SKPaint { Color = SKColors.Black, IsAntialias = true };
            for (var cell = 0; cell < 81; cell++)
            {
                var (x, y) = (SketchedBoard.Margin + cell % 9 * SketchedBoard.Cell + 40, SketchedBoard.Margin + cell / 9 * SketchedBoard.Cell + 40);
                font.Size = cell < Marked ? 20 : size(cell);
                for (var mark = 1; mark <= 4 && cell < Marked; mark++)
                    canvas.DrawText(mark.ToString(CultureInfo.InvariantCulture), x + (mark % 2 == 1 ? -20 : 20), y + (mark <= 2 ? -20 : 20) + 7, SKTextAlign.Center, font, ink);
                if (cell >= Marked)
                    canvas.DrawText((cell % 9 + 1).ToString(CultureInfo.InvariantCulture), x, y + 0.36f * font.Size, SKTextAlign.Center, font, ink);
            }
        }),
        SketchedBoard.Place, GlyphReader.Standard, Lessons.None);
}
