using Companion.Drawing.Colours;
using Companion.Drawing.Pictures;
using Companion.Session.Views;
using SkiaSharp;

namespace Companion.Drawing.Stills;

/// <summary>A still: the stage as a picture file.</summary>
public static class Still
{
    // Screens of flat colour: the Sub filter at the fastest level takes a quarter of the default's time for a quarter more bytes.
    private static readonly SKPngEncoderOptions Fast = new(SKPngEncoderFilterFlags.Sub, 1);

    /// <summary>Draws the stage. The same arguments give the same bytes.</summary>
    /// <param name="view">The board and its credit; its hint on air is drawn only if its picture is given.</param>
    /// <param name="picture">What to draw on the board, or null for nothing.</param>
    /// <param name="options">Size and theme.</param>
    /// <returns>A PNG file.</returns>
    public static byte[] Png(StageView view, Picture? picture, StillOptions options)
    {
        ArgumentNullException.ThrowIfNull(view);
        ArgumentNullException.ThrowIfNull(options);
        using var bitmap = Bitmap(view, picture, options);
        using var pixels = bitmap.PeekPixels();
        using var data = pixels?.Encode(Fast) ?? throw new InvalidOperationException("The image could not be encoded.");
        return data.ToArray();
    }

    internal static SKBitmap Bitmap(StageView view, Picture? picture, StillOptions options)
    {
        var bitmap = new SKBitmap(options.Width, options.Height, SKColorType.Rgba8888, SKAlphaType.Opaque);
        using var canvas = new SKCanvas(bitmap);
        using var letters = new Lettering();
        new StagePainter(canvas, letters, Palette.Standard, options).Paint(view, picture);
        return bitmap;
    }
}
