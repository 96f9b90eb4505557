using Companion.Drawing.Colours;
using SkiaSharp;

namespace Companion.Drawing.Stills;

/// <summary>
/// Text in the fonts that travel with the assembly. The natives for Linux see no fonts of the system, and a still must look the
/// same everywhere.
/// </summary>
/// <param name="faces">The fonts; those of the assembly by default. They are not disposed with it.</param>
/// <param name="drawn">Takes what is drawn, letter by letter; null where nobody wants to know.</param>
internal sealed class Lettering(Typefaces? faces = null, ISet<char>? drawn = null) : IDisposable
{
    private readonly SKPaint _paint = new() { IsAntialias = true };
    private readonly SKFont _regular = Font((faces ?? Typefaces.Shipped).Regular);
    private readonly SKFont _bold = Font((faces ?? Typefaces.Shipped).Bold);

    /// <summary>Draws a digit or letter with the middle of its body on the point.</summary>
    internal void Centred(SKCanvas canvas, string text, SKPoint middle, float size, Colour colour, bool bold = true)
    {
        var font = At(size, bold);
        drawn?.UnionWith(text);
        canvas.DrawText(text, middle.X, middle.Y + font.Metrics.CapHeight / 2, SKTextAlign.Center, font, Ink(colour));
    }

    /// <summary>Draws the rim of a bold letter that <see cref="Centred"/> would draw.</summary>
    internal void Rim(SKCanvas canvas, string text, SKPoint middle, float size, Colour colour, float width)
    {
        using var pen = new SKPaint
        {
            IsAntialias = true,
            Style = SKPaintStyle.Stroke,
            StrokeWidth = 2 * width,
            StrokeJoin = SKStrokeJoin.Round,
            Color = colour.ToSkia(),
        };
        // As an outline: it is no text to be found or copied beside the letter itself.
        var font = At(size, bold: true);
        var start = new SKPoint(middle.X - font.MeasureText(text) / 2, middle.Y + font.Metrics.CapHeight / 2);
        using var outline = font.GetTextPath(text, start);
        canvas.DrawPath(outline, pen);
    }

    /// <summary>Draws a line of text from its left end on the base line.</summary>
    internal void Line(SKCanvas canvas, string text, SKPoint start, float size, Colour colour, bool bold = false)
    {
        drawn?.UnionWith(text);
        canvas.DrawText(text, start.X, start.Y, SKTextAlign.Left, At(size, bold), Ink(colour));
    }

    /// <summary>How wide a line of text comes out.</summary>
    internal float WidthOf(string text, float size, bool bold = false) => At(size, bold).MeasureText(text);

    public void Dispose()
    {
        _paint.Dispose();
        _regular.Dispose();
        _bold.Dispose();
    }

    private SKFont At(float size, bool bold)
    {
        var font = bold ? _bold : _regular;
        font.Size = size;
        return font;
    }

    private SKPaint Ink(Colour colour)
    {
        _paint.Color = colour.ToSkia();
        return _paint;
    }

    private static SKFont Font(SKTypeface face) =>
        new(face) { Edging = SKFontEdging.Antialias, Hinting = SKFontHinting.None, Subpixel = true };
}
