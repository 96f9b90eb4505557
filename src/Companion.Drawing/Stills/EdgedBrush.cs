using Companion.Drawing.Colours;
using SkiaSharp;

namespace Companion.Drawing.Stills;

/// <summary>
/// Paints every form with a light edge round it and a dark one round that, so that one of the two stands out on any ground. As the
/// pages' painter does it: strokes of three widths, the lowest first.
/// </summary>
/// <param name="canvas">What to paint on.</param>
/// <param name="palette">The colours of the edges.</param>
/// <param name="edge">Width of each edge in pixels.</param>
internal sealed class EdgedBrush(SKCanvas canvas, Palette palette, float edge) : IDisposable
{
    private readonly SKPaint _fill = new() { IsAntialias = true };
    private readonly SKPaint _pen = new() { IsAntialias = true, StrokeJoin = SKStrokeJoin.Miter };

    /// <summary>What it paints on.</summary>
    internal SKCanvas Canvas => canvas;

    /// <summary>Width of each edge in pixels.</summary>
    internal float Edge => edge;

    /// <summary>Fills a form that has both edges round it.</summary>
    internal void Fill(SKPath form, Colour colour)
    {
        Grown(form, 2 * edge, palette.DarkEdge);
        Grown(form, edge, palette.LightEdge);
        Bare(form, colour);
    }

    /// <summary>Fills a light plate; its dark edge is enough.</summary>
    internal void Plate(SKPath form)
    {
        Grown(form, edge, palette.DarkEdge);
        Bare(form, palette.LightEdge);
    }

    /// <summary>Draws a line with both edges; its ends are square and reach half its width further.</summary>
    internal void Line(SKPath line, float width, Colour colour, Dashes? dashes = null)
    {
        Stroke(line, width + 4 * edge, palette.DarkEdge, dashes, width);
        Stroke(line, width + 2 * edge, palette.LightEdge, dashes, width);
        Stroke(line, width, colour, dashes, width);
    }

    /// <summary>Draws a line without edges.</summary>
    internal void Stroke(SKPath line, float width, Colour colour) => Stroke(line, width, colour, dashes: null, width);

    public void Dispose()
    {
        _fill.Dispose();
        _pen.Dispose();
    }

    private void Stroke(SKPath line, float width, Colour colour, Dashes? dashes, float inner)
    {
        using var effect = dashes?.Effect(inner);
        _pen.PathEffect = effect;
        _pen.Style = SKPaintStyle.Stroke;
        _pen.StrokeCap = SKStrokeCap.Square;
        _pen.StrokeWidth = width;
        _pen.Color = colour.ToSkia();
        canvas.DrawPath(line, _pen);
        _pen.PathEffect = null;
    }

    private void Bare(SKPath form, Colour colour)
    {
        _fill.Color = colour.ToSkia();
        canvas.DrawPath(form, _fill);
    }

    private void Grown(SKPath form, float by, Colour colour)
    {
        _pen.Style = SKPaintStyle.StrokeAndFill;
        _pen.StrokeCap = SKStrokeCap.Butt;
        _pen.StrokeWidth = 2 * by;
        _pen.Color = colour.ToSkia();
        canvas.DrawPath(form, _pen);
    }
}
