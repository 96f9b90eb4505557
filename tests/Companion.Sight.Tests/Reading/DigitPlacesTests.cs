using Companion.Engine;
using SkiaSharp;

namespace Companion.Sight.Tests.Reading;

/// <summary>Marks that each stand at the place of their digit, and a network that takes every 4 for a 9.</summary>
public sealed class DigitPlacesTests
{
    [Theory]
    [InlineData(false)]
    [InlineData(true)]
    public void A_mark_is_read_by_its_place_and_held_back_where_its_shape_says_otherwise(bool isUpward)
    {
        var reading = BoardReader.Read(Drawn(isUpward, hasPlaces: true), SketchedBoard.Place, Misread, around: null);

        for (var cell = 0; cell < 81; cell++)
        {
            Assert.Equal(Digits(cell), reading.Cells[cell].Marks.Select(mark => mark.Digit.Value).Order());
            Assert.Equal(Digits(cell).Contains(4), reading.Cells[cell].IsUnsure);
        }
    }

    [Fact]
    public void Where_marks_have_no_places_of_their_own_shapes_alone_tell()
    {
        var reading = BoardReader.Read(Drawn(isUpward: false, hasPlaces: false), SketchedBoard.Place, Misread, around: null);

        Assert.DoesNotContain(reading.Cells, cell => cell.Marks.Any(mark => mark.Digit.Value == 4));
    }

    private static IReadOnlyList<GlyphReading> Misread(IReadOnlyList<GlyphImage> glyphs) =>
        [.. GlyphReader.Standard.Read(glyphs).Select(reading => reading.Digit is { Value: 4 } ? new(Digit.Of(9), 0.95f) : reading)];

    // A 4 in few cells, and no 9, which would look unlike it.
    private static int[] Digits(int cell) =>
        [.. Enumerable.Range(1, 8).Where(digit => digit == 4 ? cell % 16 == 5 : (cell + digit) % 3 == 0)];

    private static Frame Drawn(bool isUpward, bool hasPlaces) => SketchedBoard.Of(canvas =>
    {
        using var font = SketchedBoard.Font("work-sans", 18);
        using var ink = new SKPaint { Color = SKColors.Black, IsAntialias = true };
        for (var cell = 0; cell < 81; cell++)
        {
            foreach (var (index, digit) in Digits(cell).Index())
            {
                var place = hasPlaces ? digit - 1 : index;
                var row = isUpward ? 2 - place / 3 : place / 3;
                var x = SketchedBoard.Margin + cell % 9 * SketchedBoard.Cell + 16 + place % 3 * 24;
                var y = SketchedBoard.Margin + cell / 9 * SketchedBoard.Cell + 23 + row * 24;
                canvas.DrawText(digit.ToString(System.Globalization.CultureInfo.InvariantCulture), x, y, SKTextAlign.Center, font, ink);
            }
        }
    });
}
