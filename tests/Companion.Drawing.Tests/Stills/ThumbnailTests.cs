using Companion.Drawing.Colours;
using Companion.Drawing.Pictures;
using Companion.Drawing.Stills;
using Companion.Drawing.Stills.Thumbnails;
using SkiaSharp;

namespace Companion.Drawing.Tests.Stills;

public class ThumbnailTests
{
    private const string LongTitle =
        "The longest evening of the year with anunusuallylongwordamongthem and a wing nobody has seen before, told step by step";

    private static readonly Picture Wing = new([new CellShape(0, 0, false, "P"), new CellShape(8, 8, true, "Q"), new HouseShape(0, 0, 9, 1)], "Words");

    public static TheoryData<int, int, Theme, string, string> Cases => new()
    {
        { 1280, 720, Theme.Light, "Evening walk", "set by A. Setter" },
        { 1280, 720, Theme.Dark, LongTitle, LongTitle },
        { 1920, 1080, Theme.Light, LongTitle, "" },
        { 720, 1280, Theme.Dark, "Evening walk", LongTitle },
        { 1000, 1000, Theme.Light, LongTitle, "set by A. Setter" },
        { 640, 360, Theme.Light, "", "" },
    };

    [Theory]
    [MemberData(nameof(Cases))]
    public void Nothing_leaves_the_graphics_safe_area(int width, int height, Theme theme, string title, string credit)
    {
        using var drawn = PngImage.Bitmap(new Thumbnail(title, credit, Boards.View.Cells, Wing, new(width, height, theme)));
        var ground = Palette.Standard.Board[theme].Surround.ToSkia();

        // EBU R 95 and ITU-R BT.1848-1: 5 % from each edge, at 1280 by 720 from (64, 36) to (1216, 684).
        for (var y = 0; y < height; y++)
        {
            for (var x = 0; x < width; x++)
            {
                if (x < width * 0.05 - 1 || x >= width * 0.95 || y < height * 0.05 - 1 || y >= height * 0.95)
                    Assert.True(ground == drawn.GetPixel(x, y), $"({x}, {y})");
            }
        }
    }

    [Theory]
    [InlineData(Theme.Light, "Evening walk", "set by A. Setter")]
    [InlineData(Theme.Dark, "Evening walk", "set by A. Setter")]
    [InlineData(Theme.Light, LongTitle, LongTitle)]
    public void At_160_pixels_of_width_the_letters_still_have_the_contrast_of_text(Theme theme, string title, string credit)
    {
        var thumbnail = new Thumbnail(title, credit, Boards.View.Cells, null, new(1280, 720, theme));
        using var drawn = PngImage.Bitmap(thumbnail);
        using var small = drawn.Resize(new SKImageInfo(160, 90), new SKSamplingOptions(SKFilterMode.Linear, SKMipmapMode.Linear));
        var ground = Palette.Standard.Board[theme].Surround;

        // Lines of text as they stand in the left half: each has pixels of 4.5:1 and more (WCAG 2.2, 1.4.3), over a height of 5 at least.
        var rows = Enumerable.Range(0, 90).Where(y => Enumerable.Range(8, 62).Any(x => StillTests.At(small, new(x, y)).ContrastTo(ground) >= 4.5)).ToList();
        var lines = rows.Aggregate(new List<List<int>>(), (lines, row) =>
        {
            if (lines.Count > 0 && lines[^1][^1] == row - 1)
                lines[^1].Add(row);
            else
                lines.Add([row]);
            return lines;
        });
        Assert.True(lines.Count >= 2, $"{lines.Count} lines");
        Assert.All(lines.Where(line => line[0] is not (>= 70 and < 76)), line => Assert.True(line.Count is >= 2, $"{line.Count} rows"));
        Assert.True(lines.Max(line => line.Count) >= 5);
    }

    [Fact]
    public void The_words_are_those_of_the_title_and_the_same_arguments_give_the_same_bytes()
    {
        byte[] Draw(string title, string credit) =>
            PngImage.Of(new Thumbnail(title, credit, Boards.View.Cells, Wing, new(1280, 720, Theme.Light)));

        Assert.Equal(Draw("One", "Two"), Draw("One", "Two"));
        Assert.NotEqual(Draw("One", "Two"), Draw("Two", "Two"));
        Assert.NotEqual(Draw("One", "Two"), Draw("One", "One"));
    }

    [Fact]
    public void A_title_that_is_too_long_is_made_smaller_and_never_smaller_than_is_read()
    {
        using var letters = new Lettering();
        foreach (var length in Enumerable.Range(1, 12).Select(words => string.Join(' ', LongTitle.Split(' ').Take(words))))
        {
            var layout = ThumbnailLayout.Of(1280, 720);
            var block = ThumbnailWords.TitleBlock(letters, length, layout, layout.Words.Height);

            // At 160 pixels of width an eighth of it.
            Assert.True(block.Size / 8 >= 9, $"{block.Size}");
            Assert.True(block.Height <= layout.Words.Height);
            Assert.All(block.Lines, line => Assert.True(letters.WidthOf(line, block.Size, bold: true) <= layout.Words.Width));
        }
    }
}
