using Companion.Drawing.Pictures;
using SkiaSharp;

namespace Companion.Drawing.Stills;

/// <summary>A house or chute to look at: light hatching, and a dashed outline that leaves room for the frames of cells.</summary>
internal static class HousePainter
{
    private const double Outset = 0.05;
    private const double Width = 0.06;
    private const double Dash = 0.32;
    private const double Gap = 0.18;

    // Lines that rise to the right, each with a thin dark one beside it.
    private const double HatchStep = 0.3;
    private const double HatchPlace = 0.03;
    private const double HatchWidth = 0.035;
    private const byte HatchAlpha = 191;
    private const double ShadePlace = 0.055;
    private const double ShadeWidth = 0.015;
    private const byte ShadeAlpha = 128;

    internal static void Paint(HouseShape house, Easel easel)
    {
        var frame = easel.Frame;
        Hatch(frame.Rect(house.X, house.Y, house.Width, house.Height), easel);
        var outline = frame.Rect(house.X - Outset, house.Y - Outset, house.Width + 2 * Outset, house.Height + 2 * Outset);
        using var path = Broken(outline, new(frame.Length(Dash), frame.Length(Gap)), frame.Length(Width));
        easel.Brush.Line(path, frame.Length(Width), easel.Palette.LookAt);
    }

    // A dash at each corner, bent round it, and whole dashes between; square ends lengthen each by the width.
    private static SKPath Broken(SKRect outline, Dashes dashes, float width)
    {
        using var path = new SKPathBuilder();
        var across = (dashes.FittedTo(outline.Width).Dash - width) / 2;
        var down = (dashes.FittedTo(outline.Height).Dash - width) / 2;
        foreach (var (x, inward) in (ReadOnlySpan<(float, int)>)[(outline.Left, 1), (outline.Right, -1)])
        {
            foreach (var (y, downward) in (ReadOnlySpan<(float, int)>)[(outline.Top, 1), (outline.Bottom, -1)])
            {
                path.MoveTo(new(x + inward * across, y));
                path.LineTo(new(x, y));
                path.LineTo(new(x, y + downward * down));
            }

            foreach (var y in Middles(outline.Top, outline.Height, dashes))
                Dash(path, new(x, y - down), new(x, y + down));
        }

        foreach (var x in Middles(outline.Left, outline.Width, dashes))
        {
            Dash(path, new(x - across, outline.Top), new(x + across, outline.Top));
            Dash(path, new(x - across, outline.Bottom), new(x + across, outline.Bottom));
        }

        return path.Detach();

        static void Dash(SKPathBuilder path, SKPoint from, SKPoint to)
        {
            path.MoveTo(from);
            path.LineTo(to);
        }
    }

    private static IEnumerable<float> Middles(float from, float side, Dashes dashes)
    {
        var count = dashes.CountOn(side);
        return Enumerable.Range(1, count - 1).Select(dash => from + dash * side / count);
    }

    // The lines are laid from the board's corner, so that those of two houses that cross fall on each other.
    private static void Hatch(SKRect area, Easel easel)
    {
        var palette = easel.Palette;
        easel.Canvas.Save();
        easel.Canvas.ClipRect(area, antialias: true);
        for (var line = 0; line * HatchStep * Math.Sqrt(2) < 18; line++)
        {
            Slope(line * HatchStep + HatchPlace, HatchWidth, palette.LookAt.ToSkia(HatchAlpha));
            Slope(line * HatchStep + ShadePlace, ShadeWidth, palette.DarkEdge.ToSkia(ShadeAlpha));
        }

        easel.Canvas.Restore();

        // All points as far from the corner along the falling diagonal.
        void Slope(double away, double width, SKColor colour)
        {
            var (frame, along) = (easel.Frame, away * Math.Sqrt(2));
            using var pen = new SKPaint
            {
                IsAntialias = true,
                Style = SKPaintStyle.Stroke,
                StrokeWidth = frame.Length(width),
                Color = colour,
            };
            easel.Canvas.DrawLine(frame.Point(along, 0), frame.Point(along - 18, 18), pen);
        }
    }
}
