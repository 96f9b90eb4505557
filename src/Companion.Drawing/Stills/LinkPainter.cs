using Companion.Drawing.Pictures;
using SkiaSharp;

namespace Companion.Drawing.Stills;

/// <summary>A link: solid if strong, broken if weak.</summary>
internal static class LinkPainter
{
    private const double Width = 0.06;
    private const double Dash = 0.17;
    private const double Gap = 0.13;

    internal static void Paint(LinkShape link, Easel easel)
    {
        var frame = easel.Frame;
        using var builder = new SKPathBuilder();
        builder.MoveTo(frame.Point(link.X1, link.Y1));
        builder.QuadTo(frame.Point(link.BendX, link.BendY), frame.Point(link.X2, link.Y2));
        using var path = builder.Detach();
        float[]? dashes = link.IsStrong ? null : [frame.Length(Dash), frame.Length(Gap)];
        easel.Brush.Line(path, frame.Length(Width), easel.Palette.Link, dashes);
    }
}
