using Microsoft.Playwright;
using SkiaSharp;

namespace Companion.Browser.Tests;

/// <summary>What a page has painted, with its transparency, as the broadcast software takes it over.</summary>
internal sealed class Pixels
{
    private readonly SKBitmap _bitmap;

    private Pixels(SKBitmap bitmap) => _bitmap = bitmap;

    public int Width => _bitmap.Width;

    public int Height => _bitmap.Height;

    public static async Task<Pixels> OfAsync(IPage page) =>
        new(SKBitmap.Decode(await page.ScreenshotAsync(new() { OmitBackground = true })));

    /// <summary>How many pixels of the area are not fully transparent. Fractions of the page, 0 to 1.</summary>
    public int PaintedIn(double left, double top, double right, double bottom)
    {
        var painted = 0;
        for (var y = (int)(top * Height); y < (int)(bottom * Height); y++)
        {
            for (var x = (int)(left * Width); x < (int)(right * Width); x++)
                painted += _bitmap.GetPixel(x, y).Alpha > 0 ? 1 : 0;
        }

        return painted;
    }

    public int Painted => PaintedIn(0, 0, 1, 1);

    public bool Differs(Pixels other) => !_bitmap.Bytes.AsSpan().SequenceEqual(other._bitmap.Bytes);
}
