using Companion.Drawing.Colours;
using SkiaSharp;

namespace Companion.Drawing.Stills;

/// <summary>
/// Paints every form with a dark edge round it and a light one round that, so that one of the two stands out on any ground.
/// </summary>
/// <param name="canvas">What to paint on.</param>
/// <param name="palette">The colours of the edges.</param>
/// <param name="edge">Width of each edge in pixels.</param>
internal sealed class EdgedBrush(SKCanvas canvas, Palette palette, float edge) : IDisposable
{
    private readonly SKPaint _fill = new() { IsAntialias = true };
    private readonly SKPaint _outline = new()
    {
        IsAntialias = true,
        Style = SKPaintStyle.StrokeAndFill,
        StrokeJoin = SKStrokeJoin.Round,
    };

    /// <summary>What it paints on.</summary>
    internal SKCanvas Canvas => canvas;

    /// <summary>How far the edges reach beyond a form, in pixels.</summary>
    internal float Reach => 2 * edge;

    internal void Fill(SKPath form, Colour colour)
    {
        Grown(form, 2 * edge, palette.LightEdge);
        Grown(form, edge, palette.DarkEdge);
        _fill.Color = colour.ToSkia();
        canvas.DrawPath(form, _fill);
    }

    internal void Line(SKPath line, float width, Colour colour, float[]? dashes = null)
    {
        using var dash = dashes is null ? null : SKPathEffect.CreateDash(dashes, 0);
        using var pen = new SKPaint
        {
            Style = SKPaintStyle.Stroke,
            StrokeWidth = width,
            StrokeCap = dashes is null ? SKStrokeCap.Square : SKStrokeCap.Butt,
            PathEffect = dash,
        };
        using var form = pen.GetFillPath(line);
        Fill(form, colour);
    }

    public void Dispose()
    {
        _fill.Dispose();
        _outline.Dispose();
    }

    private void Grown(SKPath form, float by, Colour colour)
    {
        _outline.StrokeWidth = 2 * by;
        _outline.Color = colour.ToSkia();
        canvas.DrawPath(form, _outline);
    }
}
