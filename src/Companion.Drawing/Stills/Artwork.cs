using SkiaSharp;

namespace Companion.Drawing.Stills;

/// <summary>Something drawn that fills a picture of a size. <see cref="PngImage"/> and <see cref="SvgImage"/> make files of it.</summary>
public abstract class Artwork
{
    /// <summary>Begins it.</summary>
    /// <param name="width">Width in pixels, 240 to 8192.</param>
    /// <param name="height">Height in pixels, 240 to 8192.</param>
    /// <exception cref="ArgumentOutOfRangeException">The width or the height is out of its range.</exception>
    private protected Artwork(int width, int height)
    {
        StillOptions.Check(width, height);
        (Width, Height) = (width, height);
    }

    /// <summary>Width in pixels.</summary>
    public int Width { get; }

    /// <summary>Height in pixels.</summary>
    public int Height { get; }

    /// <summary>What it shows, for those who cannot see it; may be empty.</summary>
    public abstract string Description { get; }

    /// <summary>Whether the ground shows through.</summary>
    internal virtual bool IsTransparent => false;

    /// <summary>Paints it from (0, 0) to its width and height.</summary>
    internal abstract void Paint(SKCanvas canvas, Lettering letters);
}
