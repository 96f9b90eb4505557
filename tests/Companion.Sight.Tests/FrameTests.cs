using SkiaSharp;

namespace Companion.Sight.Tests;

public sealed class FrameTests
{
    [Theory]
    [InlineData(SKEncodedImageFormat.Png)]
    [InlineData(SKEncodedImageFormat.Jpeg)]
    [InlineData(SKEncodedImageFormat.Webp)]
    public void A_picture_is_read_in_each_format(SKEncodedImageFormat format)
    {
        var frame = Frame.Decode(Picture(format, SKColors.Orange));

        Assert.NotNull(frame);
        Assert.Equal((40, 30), (frame.Width, frame.Height));
        Assert.InRange(frame.Pixels[0], 250, 255);
        Assert.InRange(frame.Pixels[1], 160, 170);
        Assert.InRange(frame.Pixels[2], 0, 5);
    }

    [Fact]
    public void What_is_transparent_is_seen_on_white() =>
        Assert.Equal([255, 255, 255, 255], Frame.Decode(Picture(SKEncodedImageFormat.Png, SKColors.Transparent))!.Pixels[..4].ToArray());

    [Fact]
    public void What_is_no_picture_is_none()
    {
        Assert.Null(Frame.Decode("no picture"u8));
        Assert.Null(Frame.Decode([]));
    }

    [Fact]
    public void Sizes_must_fit_together() => Assert.Throws<ArgumentException>(() => new Frame(2, 2, new byte[4]));

    private static byte[] Picture(SKEncodedImageFormat format, SKColor colour)
    {
        using var bitmap = new SKBitmap(40, 30);
        bitmap.Erase(colour);
        using var data = bitmap.Encode(format, 100);
        return data.ToArray();
    }
}
