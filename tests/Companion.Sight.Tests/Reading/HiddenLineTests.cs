using SkiaSharp;

namespace Companion.Sight.Tests.Reading;

/// <summary>Heavy small marks, some with a short level line through them that lies in the strokes of some digits.</summary>
public sealed class HiddenLineTests
{
    [Fact]
    public void Lines_that_hide_in_the_strokes_are_found_by_the_lines_that_do_not()
    {
        var reading = BoardReader.Read(Drawn(), SketchedBoard.Place, GlyphReader.Standard, Lessons.None);

        for (var cell = 0; cell < 81; cell++)
        {
            Assert.Equal(Digits(cell), reading.Cells[cell].Marks.Select(mark => mark.Digit.Value));
            Assert.Equal(Digits(cell).Where(digit => IsStruck(cell, digit)), reading.Cells[cell].Marks.Where(mark => mark.IsStruck).Select(mark => mark.Digit.Value));
        }

        Assert.InRange(reading.Cells.Count(cell => cell.IsUnsure), 0, 5);
    }

    private static int[] Digits(int cell) => [.. Enumerable.Range(1, 9).Where(digit => (cell + digit) % 3 == 0)];

    private static bool IsStruck(int cell, int digit) => (7 * cell + digit) % 6 == 0;

    private static Frame Drawn() => SketchedBoard.Of(canvas =>
    {
        using var font = SketchedBoard.Font("righteous", 18);
        using var ink = new SKPaint { Color = SKColors.Black, IsAntialias = true, StrokeWidth = 1.3f };
        for (var cell = 0; cell < 81; cell++)
        {
            foreach (var digit in Digits(cell))
            {
                var x = SketchedBoard.Margin + cell % 9 * SketchedBoard.Cell + 16 + (digit - 1) % 3 * 24 + cell * 0.013f;
                var y = SketchedBoard.Margin + cell / 9 * SketchedBoard.Cell + 16 + (digit - 1) / 3 * 24 + cell * 0.011f;
                canvas.DrawText(digit.ToString(System.Globalization.CultureInfo.InvariantCulture), x, y + 7, SKTextAlign.Center, font, ink);
                if (IsStruck(cell, digit))
                    canvas.DrawLine(x - 7.2f, y, x + 7.2f, y, ink);
            }
        }
    });
}
