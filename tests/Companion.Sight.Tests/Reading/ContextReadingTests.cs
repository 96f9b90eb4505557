using System.Globalization;
using SkiaSharp;

namespace Companion.Sight.Tests.Reading;

/// <summary>Boards as they are drawn, with a network that knows no 9: it takes each one for a 1, and is not sure of that.</summary>
public sealed class ContextReadingTests
{
    private const int Marked = 24;

    // In a corner of every cell with marks stands a 9, behind or before digits that were read.
    [Theory]
    [InlineData("1349", "1349")]
    [InlineData("349", "349")]
    [InlineData("9", "1")]
    public void Marks_are_read_together_and_what_was_chosen_by_that_is_held_back(string marks, string expected)
    {
        var reading = Read(cell => cell % 2 == 0 ? marks : "2347");

        for (var cell = 0; cell < Marked; cell++)
        {
            Assert.Equal(cell % 2 == 0 ? expected : "2347", string.Concat(reading.Cells[cell].Marks.Select(mark => mark.Digit)));
            Assert.Equal(cell % 2 == 0, reading.Cells[cell].IsUnsure);
        }
    }

    // Out of order everywhere, so that order tells nothing.
    [Fact]
    public void Where_nothing_speaks_against_it_a_mark_is_what_it_looks_like_most() =>
        Assert.All(Read(_ => "7349").Cells[..Marked], cell => Assert.Equal([7, 3, 4, 1], cell.Marks.Select(mark => mark.Digit.Value)));

    private static BoardReading Read(Func<int, string> marks) => BoardReader.Read(
        SketchedBoard.Of(canvas =>
        {
            using var font = SketchedBoard.Font("work-sans", 20);
            using var ink = new SKPaint { Color = SKColors.Black, IsAntialias = true };
            for (var cell = 0; cell < Marked; cell++)
            {
                foreach (var (index, digit) in marks(cell).Index())
                {
                    var x = SketchedBoard.Margin + cell % 9 * SketchedBoard.Cell + (index % 2 == 0 ? 20 : 60);
                    var y = SketchedBoard.Margin + cell / 9 * SketchedBoard.Cell + (index < 2 ? 27 : 67);
                    canvas.DrawText(digit.ToString(CultureInfo.InvariantCulture), x, y, SKTextAlign.Center, font, ink);
                }
            }
        }),
        SketchedBoard.Place, Misread, around: null);

    private static IReadOnlyList<GlyphReading> Misread(IReadOnlyList<GlyphImage> glyphs) =>
        [.. GlyphReader.Standard.Read(glyphs).Select(reading => reading.Digit is { Value: 9 } ? ContextBoard.Guess(0.3f, (1, 0.6f), (9, 0.3f)) : reading)];
}
