using Companion.Drawing.Colours;
using SkiaSharp;

namespace Companion.Drawing.Stills;

/// <summary>
/// Text in the fonts that travel with the assembly. The natives for Linux see no fonts of the system, and a still must look the
/// same everywhere.
/// </summary>
/// <param name="faces">The fonts; those of the assembly by default. They are not disposed with it.</param>
/// <param name="drawn">Takes what is drawn, letter by letter; null where nobody wants to know.</param>
/// <param name="asOutlines">
/// Whether letters are drawn as the forms that they are, and so need no font where the file is opened.
/// </param>
internal sealed class Lettering(Typefaces? faces = null, ISet<char>? drawn = null, bool asOutlines = false) : IDisposable
{
    // Half the height of a capital or digit, as a share of the size: the base line lies so far below the middle. The pages have it too.
    private const float Drop = 0.355f;

    private readonly SKPaint _paint = new() { IsAntialias = true };
    private readonly SKPaint _rim = new() { IsAntialias = true, Style = SKPaintStyle.Stroke, StrokeJoin = SKStrokeJoin.Miter };
    private readonly SKFont _regular = Font((faces ?? Typefaces.Shipped).Regular);
    private readonly SKFont _bold = Font((faces ?? Typefaces.Shipped).Bold);

    /// <summary>Draws a digit or letter with the middle of its body on the point.</summary>
    internal void Centred(SKCanvas canvas, string text, SKPoint middle, float size, Colour colour, bool bold = true)
    {
        Draw(canvas, text, StartOf(text, middle, size, bold), At(size, bold), colour);
    }

    /// <summary>Draws the rim of a bold letter that <see cref="Centred"/> would draw.</summary>
    internal void Rim(SKCanvas canvas, string text, SKPoint middle, float size, Colour colour, float width)
    {
        // As an outline: it is no text to be found or copied beside the letter itself.
        _rim.StrokeWidth = 2 * width;
        _rim.Color = colour.ToSkia();
        Outline(canvas, text, StartOf(text, middle, size, bold: true), At(size, bold: true), _rim);
    }

    /// <summary>Draws a line of text from its left end on the base line.</summary>
    internal void Line(SKCanvas canvas, string text, SKPoint start, float size, Colour colour, bool bold = false)
    {
        Draw(canvas, text, start, At(size, bold), colour);
    }

    /// <summary>How wide a line of text comes out.</summary>
    internal float WidthOf(string text, float size, bool bold = false) => At(size, bold).MeasureText(text);

    public void Dispose()
    {
        _paint.Dispose();
        _rim.Dispose();
        _regular.Dispose();
        _bold.Dispose();
    }

    private void Draw(SKCanvas canvas, string text, SKPoint start, SKFont font, Colour colour)
    {
        drawn?.UnionWith(text);
        _paint.Color = colour.ToSkia();
        if (asOutlines)
            Outline(canvas, text, start, font, _paint);
        else
            canvas.DrawText(text, start.X, start.Y, SKTextAlign.Left, font, _paint);
    }

    private static void Outline(SKCanvas canvas, string text, SKPoint start, SKFont font, SKPaint paint)
    {
        // Letters that are drawn as such have their base line on whole pixels.
        if (canvas.TotalMatrix.IsIdentity)
            start.Y = MathF.Round(start.Y);
        using var outlines = font.GetTextPath(text, start);
        canvas.DrawPath(outlines, paint);
    }

    private SKPoint StartOf(string text, SKPoint middle, float size, bool bold) =>
        new(middle.X - WidthOf(text, size, bold) / 2, middle.Y + size * Drop);

    private SKFont At(float size, bool bold)
    {
        var font = bold ? _bold : _regular;
        font.Size = size;
        return font;
    }

    private static SKFont Font(SKTypeface face) =>
        new(face) { Edging = SKFontEdging.Antialias, Hinting = SKFontHinting.None, Subpixel = true };
}
