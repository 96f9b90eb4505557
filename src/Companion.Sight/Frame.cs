using SkiaSharp;

namespace Companion.Sight;

/// <summary>A picture as it came in, in memory alone: nothing here is ever written down.</summary>
public sealed class Frame
{
    /// <summary>The most pixels that are taken, as many as two screens of 3,840 by 2,160 have.</summary>
    public const int MostPixels = 2 * 3840 * 2160;

    private readonly byte[] _pixels;

    /// <summary>Makes a frame of pixels.</summary>
    /// <param name="width">Columns, at least 1.</param>
    /// <param name="height">Rows, at least 1.</param>
    /// <param name="pixels">Red, green, blue and 255 for each pixel, row by row. Taken over, not copied.</param>
    /// <exception cref="ArgumentException">The sizes do not fit together.</exception>
    public Frame(int width, int height, byte[] pixels)
    {
        ArgumentNullException.ThrowIfNull(pixels);
        ArgumentOutOfRangeException.ThrowIfLessThan(width, 1);
        ArgumentOutOfRangeException.ThrowIfLessThan(height, 1);
        if (pixels.Length != 4L * width * height)
            throw new ArgumentException("There are four bytes for each pixel.", nameof(pixels));
        (Width, Height, _pixels) = (width, height, pixels);
    }

    /// <summary>Columns.</summary>
    public int Width { get; }

    /// <summary>Rows.</summary>
    public int Height { get; }

    /// <summary>Red, green, blue and 255 for each pixel, row by row.</summary>
    public ReadOnlySpan<byte> Pixels => _pixels;

    /// <summary>Reads a PNG, JPEG or WebP, turned as its camera says; what is transparent is seen on white.</summary>
    /// <param name="file">The file's bytes.</param>
    /// <returns>The frame; null where this is no such picture, is damaged, or has more than <see cref="MostPixels"/>.</returns>
    public static Frame? Decode(ReadOnlySpan<byte> file)
    {
        using var data = SKData.CreateCopy(file);
        using var codec = SKCodec.Create(data);
        if (codec is null || (long)codec.Info.Width * codec.Info.Height is 0 or > MostPixels)
            return null;
        using var decoded = SKBitmap.Decode(codec);
        if (decoded is null)
            return null;
        var (turn, isSideways) = Turn(codec.EncodedOrigin, decoded.Width, decoded.Height);
        var (width, height) = isSideways ? (decoded.Height, decoded.Width) : (decoded.Width, decoded.Height);
        var pixels = new byte[4 * width * height];
        using var seen = new SKBitmap(new SKImageInfo(width, height, SKColorType.Rgba8888, SKAlphaType.Opaque));
        using (var canvas = new SKCanvas(seen))
        {
            canvas.Clear(SKColors.White);
            canvas.SetMatrix(turn);
            canvas.DrawBitmap(decoded, 0, 0, SKSamplingOptions.Default);
        }

        seen.GetPixelSpan().CopyTo(pixels);
        return new(width, height, pixels);
    }

    // Exif 2.32, tag 274, "Orientation": where the first row and the first column of the stored picture are when it is looked at.
    private static (SKMatrix Matrix, bool IsSideways) Turn(SKEncodedOrigin origin, int width, int height) => origin switch
    {
        SKEncodedOrigin.TopRight => (new(-1, 0, width, 0, 1, 0, 0, 0, 1), false),
        SKEncodedOrigin.BottomRight => (new(-1, 0, width, 0, -1, height, 0, 0, 1), false),
        SKEncodedOrigin.BottomLeft => (new(1, 0, 0, 0, -1, height, 0, 0, 1), false),
        SKEncodedOrigin.LeftTop => (new(0, 1, 0, 1, 0, 0, 0, 0, 1), true),
        SKEncodedOrigin.RightTop => (new(0, -1, height, 1, 0, 0, 0, 0, 1), true),
        SKEncodedOrigin.RightBottom => (new(0, -1, height, -1, 0, width, 0, 0, 1), true),
        SKEncodedOrigin.LeftBottom => (new(0, 1, 0, -1, 0, width, 0, 0, 1), true),
        _ => (SKMatrix.Identity, false),
    };
}
