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

    /// <summary>Exif 2.32, table of tag 274: where the upper left quarter of the stored picture is when it is looked at.</summary>
    [Theory]
    [InlineData(1, 0, 0)]
    [InlineData(2, 1, 0)]
    [InlineData(3, 1, 1)]
    [InlineData(4, 0, 1)]
    [InlineData(5, 0, 0)]
    [InlineData(6, 1, 0)]
    [InlineData(7, 1, 1)]
    [InlineData(8, 0, 1)]
    public void A_photograph_is_turned_as_its_camera_says(byte orientation, int column, int row)
    {
        using var bitmap = new SKBitmap(64, 32);
        bitmap.Erase(SKColors.White);
        using (var canvas = new SKCanvas(bitmap))
        using (var paint = new SKPaint { Color = SKColors.Black })
            canvas.DrawRect(0, 0, 32, 16, paint);
        using var data = bitmap.Encode(SKEncodedImageFormat.Jpeg, 95);

        var frame = Frame.Decode(WithOrientation(data.ToArray(), orientation))!;

        Assert.Equal(orientation < 5 ? (64, 32) : (32, 64), (frame.Width, frame.Height));
        for (var quarter = 0; quarter < 4; quarter++)
        {
            var (x, y) = ((1 + 2 * (quarter % 2)) * frame.Width / 4, (1 + 2 * (quarter / 2)) * frame.Height / 4);
            Assert.Equal((quarter % 2, quarter / 2) == (column, row), frame.Pixels[4 * (y * frame.Width + x)] < 100);
        }
    }

    [Fact]
    public void Sizes_must_fit_together() => Assert.Throws<ArgumentException>(() => new Frame(2, 2, new byte[4]));

    // An APP1 segment with a TIFF header and one directory entry: the orientation.
    private static byte[] WithOrientation(byte[] jpeg, byte orientation)
    {
        byte[] exif =
        [
            0xFF, 0xE1, 0, 34, .. "Exif\0\0"u8, .. "MM"u8, 0, 42, 0, 0, 0, 8, 0, 1, 0x01, 0x12, 0, 3, 0, 0, 0, 1, 0, orientation, 0, 0, 0, 0, 0, 0,
        ];
        return [.. jpeg[..2], .. exif, .. jpeg[2..]];
    }

    private static byte[] Picture(SKEncodedImageFormat format, SKColor colour)
    {
        using var bitmap = new SKBitmap(40, 30);
        bitmap.Erase(colour);
        using var data = bitmap.Encode(format, 100);
        return data.ToArray();
    }
}
