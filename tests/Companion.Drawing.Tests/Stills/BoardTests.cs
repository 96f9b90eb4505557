using Companion.Drawing.Colours;
using Companion.Drawing.Pictures;
using Companion.Drawing.Stills;
using Companion.Engine;
using Companion.Session.Views;
using SkiaSharp;

namespace Companion.Drawing.Tests.Stills;

public class BoardTests
{
    private static readonly StillOptions Options = new(1280, 720, Theme.Light);

    private static readonly StageCell Open = new(null, false, null, default, default);

    [Fact]
    public void Everything_that_can_be_written_in_a_cell_looks_different()
    {
        StageCell[] written =
        [
            Open,
            Open with { Digit = Digit.Of(5), IsGiven = true },
            Open with { Digit = Digit.Of(5) },
            Open with { CellMark = DigitSet.Parse("5") },
            Open with { BlockMarks = DigitSet.Parse("5") },
            Open with { Struck = DigitSet.Parse("5") },
            Open with { CellMark = DigitSet.Parse("57") },
        ];

        var images = written.Select(cell => Convert.ToHexString(Image(cell))).ToList();

        Assert.Equal(images.Count, images.Distinct().Count());
    }

    [Fact]
    public void A_digit_covers_the_marks_of_its_cell()
    {
        var filled = Open with { Digit = Digit.Of(5) };

        Assert.Equal(Image(filled), Image(filled with { CellMark = DigitSet.Parse("123") }));
    }

    [Fact]
    public void Every_digit_can_be_told_from_the_others()
    {
        var images = Digit.All.Select(digit => Convert.ToHexString(Image(Open with { Digit = digit }))).ToList();

        Assert.Equal(9, images.Distinct().Count());
    }

    [Fact]
    public void No_mark_looks_out_from_under_a_lozenge()
    {
        var picture = new Picture([new LozengeShape(6.5, 4.5, 5)], "");

        Assert.Equal(Image(Open, picture), Image(Open with { CellMark = DigitSet.Parse("123456789") }, picture));
    }

    private static byte[] Image(StageCell cell, Picture? picture = null)
    {
        var view = Boards.View with { Cells = Boards.View.Cells.SetItem(Cell.Of(5, 7).Index, cell) };
        using var still = Still.Bitmap(view, picture, Options);
        using var image = new SKBitmap();
        Assert.True(still.ExtractSubset(image, SKRectI.Truncate(StillLayout.Of(Options).Board.Rect(6, 4, 1, 1))));
        using var copy = image.Copy();
        return copy.Bytes;
    }
}
