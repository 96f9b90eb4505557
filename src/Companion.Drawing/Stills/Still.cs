using Companion.Drawing.Pictures;
using Companion.Session.Views;
using SkiaSharp;

namespace Companion.Drawing.Stills;

/// <summary>A still: the stage as a picture file.</summary>
public static class Still
{
    /// <summary>Draws the stage. The same arguments give the same bytes.</summary>
    /// <param name="view">The board and its credit; its hint on air is drawn only if its picture is given.</param>
    /// <param name="picture">What to draw on the board, or null for nothing.</param>
    /// <param name="options">Size and theme.</param>
    /// <returns>A PNG file.</returns>
    public static byte[] Png(StageView view, Picture? picture, StillOptions options)
    {
        ArgumentNullException.ThrowIfNull(view);
        ArgumentNullException.ThrowIfNull(options);
        return PngImage.Of(new StageStill(view, picture, options));
    }

    internal static SKBitmap Bitmap(StageView view, Picture? picture, StillOptions options) =>
        PngImage.Bitmap(new StageStill(view, picture, options));
}
