using Companion.Drawing.Colours;
using Companion.Drawing.Pictures;
using Companion.Drawing.Stills;
using Companion.Drawing.Stills.Overlays;
using Companion.Session.State;
using SkiaSharp;

namespace Companion.Drawing.Tests.Stills;

/// <summary>What is on air alone. That it is what a browser draws is tested in a browser.</summary>
public class AirStillTests
{
    private static readonly Picture Lozenge = new([new LozengeShape(4.5, 4.5, 5)], "");

    [Theory]
    [InlineData(480, 480)]
    [InlineData(1280, 720)]
    [InlineData(720, 1280)]
    public void Only_the_shapes_are_painted_and_lie_in_the_scenes_frame(int width, int height)
    {
        var frame = new Frame(0.1, 0.2, 0.45, 0.63);
        using var still = SKBitmap.Decode(PngImage.Of(new AirStill(Lozenge, frame, width, height)));

        Assert.Equal((width, height), (still.Width, still.Height));
        var middle = still.GetPixel((int)((frame.Left + frame.Width / 2) * width), (int)((frame.Top + frame.Height * 4.2 / 9) * height));
        Assert.Equal(Palette.Standard.Follows.ToSkia(), middle);
        for (var y = 0; y < height; y++)
        {
            for (var x = 0; x < width; x++)
            {
                var (column, row) = ((x + 0.5 - frame.Left * width) / (frame.Width * width / 9), (y + 0.5 - frame.Top * height) / (frame.Height * height / 9));
                if (Math.Abs(column - 4.5) > 0.6 || Math.Abs(row - 4.5) > 0.6)
                    Assert.Equal(0, still.GetPixel(x, y).Alpha);
            }
        }
    }

    [Fact]
    public void Nothing_on_air_is_a_picture_that_shows_through_everywhere()
    {
        using var still = SKBitmap.Decode(PngImage.Of(new AirStill(null, Frame.Centred(0.9), 320, 240)));

        Assert.All(still.Pixels, pixel => Assert.Equal(0, pixel.Alpha));
    }

    [Theory]
    [InlineData(0.9, "Hidden single: 8 in block 2")]
    [InlineData(1, "Words that have no room anywhere but over the board, a line or two of them, as it fills the picture")]
    [InlineData(0.4, "Words")]
    public void The_caption_keeps_within_the_safe_area(double boardHeight, string words)
    {
        foreach (var (width, height) in new[] { (1280, 720), (1000, 800), (640, 360) })
        {
            using var still = PngImage.Bitmap(new AirStill(new([], words), Frame.Centred(boardHeight), width, height));

            // EBU R 95: 5 % from each edge. The plate's outline of a pixel or two lies outside the room, as on the page.
            var safe = SKRect.Create(width * 0.05f - 3, height * 0.05f - 3, width * 0.9f + 6, height * 0.9f + 6);
            Assert.Contains(still.Pixels, pixel => pixel.Alpha == 255);
            for (var index = 0; index < width * height; index++)
            {
                if (!safe.Contains(index % width, index / width))
                    Assert.Equal(0, still.GetPixel(index % width, index / width).Alpha);
            }
        }
    }
}
