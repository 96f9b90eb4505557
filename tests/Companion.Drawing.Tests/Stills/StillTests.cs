using Companion.Drawing.Colours;
using Companion.Drawing.Pictures;
using Companion.Drawing.Stills;
using Companion.Session.State;
using SkiaSharp;

namespace Companion.Drawing.Tests.Stills;

public class StillTests
{
    // One of each shape, far enough from each other not to touch.
    private static readonly Picture Everything = new(
    [
        new HouseShape(0, 0, 3, 3),
        new CellShape(4, 4, false, "P"),
        new CellShape(7, 4, true, "Q"),
        new LinkShape(4.5, 4.5, 7.5, 4.5, 6, 4.5, true),
        new MarkShape(4.5, 4.5, 5),
        new SlashShape(7.5, 7.5, 5),
        new LozengeShape(1.5, 7.5, 6),
    ],
    "Words about it");

    public static TheoryData<int, int, Theme> Sizes => new()
    {
        { 1280, 720, Theme.Light },
        { 1920, 1080, Theme.Dark },
        { 1080, 1080, Theme.Dark },
        { 720, 1280, Theme.Light },
    };

    [Theory]
    [MemberData(nameof(Sizes))]
    public void A_still_is_a_png_of_the_size_asked_for(int width, int height, Theme theme)
    {
        using var still = SKBitmap.Decode(Still.Png(Boards.View, Everything, new(width, height, theme)));

        Assert.Equal((width, height), (still.Width, still.Height));
    }

    [Fact]
    public void The_same_still_has_the_same_bytes()
    {
        var options = new StillOptions(1280, 720, Theme.Dark);

        Assert.Equal(Still.Png(Boards.View, Everything, options), Still.Png(Boards.View, Everything, options));
    }

    [Theory]
    [MemberData(nameof(Sizes))]
    public void An_empty_picture_leaves_the_stage_as_it_is(int width, int height, Theme theme)
    {
        var options = new StillOptions(width, height, theme);
        using var bare = Still.Bitmap(Boards.View, null, options);
        using var empty = Still.Bitmap(Boards.View, new([], ""), options);

        Assert.Equal(bare.Bytes, empty.Bytes);
    }

    [Theory]
    [MemberData(nameof(Sizes))]
    public void Shapes_stand_in_their_colours_where_the_picture_puts_them(int width, int height, Theme theme)
    {
        var options = new StillOptions(width, height, theme);
        using var still = Still.Bitmap(Boards.View, Everything, options);
        (double X, double Y, Colour Colour)[] places =
        [
            (-0.05, -0.05, Palette.Standard.LookAt), // the corner of the outline, just outside the house
            (4.027, 4.5, Palette.Standard.FirstRole),
            (7.5, 4.014, Palette.Standard.SecondRole), // the outer strand
            (6, 4.5, Palette.Standard.Link),
            (4.5 - 0.107, 4.5, Palette.Standard.LightEdge), // the plate beside the digit
            (7.5 - 0.13, 7.5 + 0.13, Palette.Standard.Goes),
            (1.5, 7.5 - 0.3, Palette.Standard.Follows),
        ];

        var frame = StillLayout.Of(options).Board;
        Assert.All(places, place => Assert.Equal(place.Colour, At(still, frame.Point(place.X, place.Y))));
    }

    [Theory]
    [MemberData(nameof(Sizes))]
    public void A_picture_changes_nothing_away_from_its_shapes(int width, int height, Theme theme)
    {
        var options = new StillOptions(width, height, theme);
        using var bare = Still.Bitmap(Boards.View, null, options);
        using var drawn = Still.Bitmap(Boards.View, Everything with { Caption = "" }, options);
        var frame = StillLayout.Of(options).Board;

        // Columns 4 to 9 of rows 1 to 3, and rows 6 and 7: half a cell from any shape.
        foreach (var area in new[] { frame.Rect(3.5, 0, 5.5, 3.5), frame.Rect(0, 5.5, 9, 1) })
            Assert.True(AreEqual(bare, drawn, SKRectI.Truncate(area)));
        Assert.False(AreEqual(bare, drawn, SKRectI.Truncate(frame.Bounds)));
    }

    [Theory]
    [MemberData(nameof(Sizes))]
    public void Nothing_leaves_the_graphics_safe_area_however_long_the_words(int width, int height, Theme theme)
    {
        var options = new StillOptions(width, height, theme);
        var longWords = string.Join(' ', Enumerable.Repeat("very long words with anunusuallylongwordamongthem", 12));
        var view = Boards.View with { Credit = new Credit(longWords, longWords, "https://example.org/" + new string('a', 200)) };
        using var still = Still.Bitmap(view, Everything with { Caption = longWords }, options);

        // EBU R 95: 5 % from each edge; a pixel of blur is allowed.
        var ground = Palette.Standard.Board[theme].Surround;
        var (x, y) = ((int)(width * 0.05) - 1, (int)(height * 0.05) - 1);
        for (var row = 0; row < height; row++)
        {
            for (var column = 0; column < width; column++)
            {
                if (column < x || column >= width - x || row < y || row >= height - y)
                    Assert.Equal(ground, At(still, new(column, row)));
            }
        }
    }

    [Theory]
    [InlineData(239, 720)]
    [InlineData(1280, 239)]
    [InlineData(8193, 720)]
    [InlineData(1280, 8193)]
    public void Sizes_out_of_range_are_refused(int width, int height) =>
        Assert.Throws<ArgumentOutOfRangeException>(() => new StillOptions(width, height, Theme.Light));

    [Fact]
    public void The_smallest_still_is_drawn_too()
    {
        var options = new StillOptions(StillOptions.Smallest, StillOptions.Smallest, Theme.Light);
        using var still = SKBitmap.Decode(Still.Png(Boards.View, Everything, options));

        Assert.Equal(StillOptions.Smallest, still.Width);
    }

    internal static Colour At(SKBitmap still, SKPoint point)
    {
        var pixel = still.GetPixel((int)point.X, (int)point.Y);
        return new(pixel.Red, pixel.Green, pixel.Blue);
    }

    private static bool AreEqual(SKBitmap one, SKBitmap other, SKRectI area)
    {
        for (var y = area.Top; y < area.Bottom; y++)
        {
            for (var x = area.Left; x < area.Right; x++)
            {
                if (one.GetPixel(x, y) != other.GetPixel(x, y))
                    return false;
            }
        }

        return true;
    }
}
