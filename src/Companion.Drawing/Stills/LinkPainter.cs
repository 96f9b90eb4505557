using Companion.Drawing.Pictures;
using SkiaSharp;

namespace Companion.Drawing.Stills;

/// <summary>A link: solid if strong, broken if weak.</summary>
internal static class LinkPainter
{
    private const double Width = 0.06;
    private const double Dash = 0.17;
    private const double Gap = 0.15;

    internal static void Paint(LinkShape link, Easel easel)
    {
        var frame = easel.Frame;
        using var builder = new SKPathBuilder();
        builder.MoveTo(frame.Point(link.X1, link.Y1));
        builder.QuadTo(frame.Point(link.BendX, link.BendY), frame.Point(link.X2, link.Y2));
        using var path = builder.Detach();
        easel.Brush.Line(path, frame.Length(Width), easel.Palette.Link, link.IsStrong ? null : Fitted(path));

        Dashes Fitted(SKPath path)
        {
            using var measure = new SKPathMeasure(path);
            return new Dashes(frame.Length(Dash), frame.Length(Gap)).FittedTo(measure.Length);
        }
    }
}
