using Companion.Drawing.Colours;
using Companion.Drawing.Stills;
using SkiaSharp;

namespace Companion.Drawing.Paper;

/// <summary>What is drawn on, and with what. Its units are points.</summary>
internal sealed record Sheet(SKCanvas Canvas, Lettering Letters, Palette Palette)
{
    internal BoardColours Colours => Palette.Board[Theme.Paper];

    /// <summary>Draws a line of text whose letters stand within a band of the page.</summary>
    internal void Write(string text, float left, float top, float size, bool bold = false, bool quiet = false) =>
        Letters.Line(
            Canvas, text, new(left, top + size * Measures.BaseLine), size, quiet ? Colours.QuietWords : Colours.Words, bold);

    /// <summary>Draws the same with its right end at a place.</summary>
    internal void WriteUpTo(string text, float right, float top, float size, bool bold = false, bool quiet = false) =>
        Write(text, right - Letters.WidthOf(text, size, bold), top, size, bold, quiet);

    internal void Rule(float left, float right, float top, float width)
    {
        using var paint = new SKPaint { Color = Colours.Words.ToSkia() };
        Canvas.DrawRect(new(left, top, right, top + width), paint);
    }
}
