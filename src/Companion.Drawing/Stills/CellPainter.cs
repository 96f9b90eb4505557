using Companion.Drawing.Pictures;
using SkiaSharp;

namespace Companion.Drawing.Stills;

/// <summary>
/// A cell of the pattern. First role: one thick frame and a square tab. Second role: a double frame and a round tab. The tab
/// stands on the cell's top left corner, between the candidates of the four cells that meet there.
/// </summary>
internal static class CellPainter
{
    // The frame begins a little outside the cell, so that its inner edge keeps clear of the candidates.
    private const double Frame = 0.085;
    private const double Strand = 0.032;
    private const double Reach = -0.015;
    private const double Tab = 0.115;
    private const double Letter = 0.19;

    internal static void Paint(CellShape cell, Easel easel)
    {
        var palette = easel.Palette;
        if (cell.IsSecond)
        {
            // A dark band under the strands closes the gap between them.
            Ring(cell, Frame / 2, Frame, palette.DarkEdge, easel);
            Strands(cell, easel);
        }
        else
        {
            Ring(cell, Frame / 2, Frame, palette.FirstRole, easel);
        }

        PaintTab(cell, easel);
    }

    private static void Strands(CellShape cell, Easel easel)
    {
        using var pen = new SKPaint
        {
            IsAntialias = true,
            Style = SKPaintStyle.Stroke,
            StrokeWidth = easel.Frame.Length(Strand),
            Color = easel.Palette.SecondRole.ToSkia(),
        };
        foreach (var inset in (double[])[Strand / 2, Frame - Strand / 2])
            easel.Canvas.DrawRect(Inset(cell, inset, easel), pen);
    }

    private static void Ring(CellShape cell, double inset, double width, Colours.Colour colour, Easel easel)
    {
        using var builder = new SKPathBuilder();
        builder.AddRect(Inset(cell, inset, easel));
        using var ring = builder.Detach();
        easel.Brush.Line(ring, easel.Frame.Length(width), colour);
    }

    private static SKRect Inset(CellShape cell, double by, Easel easel)
    {
        var inset = by + Reach;
        return easel.Frame.Rect(cell.X + inset, cell.Y + inset, 1 - 2 * inset, 1 - 2 * inset);
    }

    private static void PaintTab(CellShape cell, Easel easel)
    {
        var (palette, frame) = (easel.Palette, easel.Frame);
        var colour = cell.IsSecond ? palette.SecondRole : palette.FirstRole;
        using var builder = new SKPathBuilder();
        if (cell.IsSecond)
            builder.AddCircle(frame.Point(cell.X, cell.Y).X, frame.Point(cell.X, cell.Y).Y, frame.Length(Tab * 1.1));
        else
            builder.AddRect(frame.Rect(cell.X - Tab, cell.Y - Tab, 2 * Tab, 2 * Tab));
        using var plate = builder.Detach();
        easel.Brush.Fill(plate, colour);
        easel.Letters.Centred(easel.Canvas, cell.Tab, frame.Point(cell.X, cell.Y), frame.Length(Letter), palette.InkOn(colour));
    }
}
