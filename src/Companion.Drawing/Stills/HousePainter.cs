using Companion.Drawing.Pictures;
using SkiaSharp;

namespace Companion.Drawing.Stills;

/// <summary>A house or chute to look at: light hatching, and a dashed outline that leaves room for the frames of cells.</summary>
internal static class HousePainter
{
    private const double Outset = 0.05;
    private const double Width = 0.065;
    private const double Dash = 0.3;
    private const double Period = 0.5;
    private const double HatchStep = 0.25;
    private const double HatchWidth = 0.035;
    private const byte HatchAlpha = 115;

    internal static void Paint(HouseShape house, Easel easel)
    {
        var frame = easel.Frame;
        Hatch(frame.Rect(house.X, house.Y, house.Width, house.Height), easel);
        var outline = frame.Rect(house.X - Outset, house.Y - Outset, house.Width + 2 * Outset, house.Height + 2 * Outset);
        using var dashes = new SKPathBuilder();
        AddDashes(dashes, new(outline.Left, outline.Top), new(outline.Right, outline.Top), frame);
        AddDashes(dashes, new(outline.Right, outline.Top), new(outline.Right, outline.Bottom), frame);
        AddDashes(dashes, new(outline.Right, outline.Bottom), new(outline.Left, outline.Bottom), frame);
        AddDashes(dashes, new(outline.Left, outline.Bottom), new(outline.Left, outline.Top), frame);
        using var path = dashes.Detach();
        easel.Brush.Line(path, frame.Length(Width), easel.Palette.LookAt);
    }

    // Each side begins and ends with half a dash, so that the corners are closed.
    private static void AddDashes(SKPathBuilder path, SKPoint from, SKPoint to, BoardFrame frame)
    {
        var side = SKPoint.Distance(from, to) / frame.CellSize;
        var count = Math.Max(1, (int)Math.Round(side / Period));
        var half = (float)(Dash / Period / 2);
        for (var dash = 0; dash <= count; dash++)
        {
            path.MoveTo(Between(Math.Max(0, (dash - half) / count)));
            path.LineTo(Between(Math.Min(1, (dash + half) / count)));
        }

        SKPoint Between(float share) => new(from.X + (to.X - from.X) * share, from.Y + (to.Y - from.Y) * share);
    }

    // The lines are laid from the board's corner, so that those of two houses that cross fall on each other.
    private static void Hatch(SKRect area, Easel easel)
    {
        var frame = easel.Frame;
        using var pen = new SKPaint
        {
            IsAntialias = true,
            Style = SKPaintStyle.Stroke,
            StrokeWidth = frame.Length(HatchWidth),
            Color = easel.Palette.LookAt.ToSkia(HatchAlpha),
        };
        easel.Canvas.Save();
        easel.Canvas.ClipRect(area);
        for (var along = 0.0; along <= 18; along += HatchStep)
            easel.Canvas.DrawLine(frame.Point(along, 0), frame.Point(along - 9, 9), pen);
        easel.Canvas.Restore();
    }
}
