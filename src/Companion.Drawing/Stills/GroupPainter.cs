using Companion.Drawing.Pictures;
using SkiaSharp;

namespace Companion.Drawing.Stills;

/// <summary>A group: a rounded outline round its candidates, in the colour of the links that lead to it.</summary>
internal static class GroupPainter
{
    // Clear of the plates, and of the plates of the digits beside them.
    private const double Radius = CandidatePlace.PlateRadius + 0.04;
    private const double Width = 0.04;

    internal static void Paint(GroupShape group, Easel easel)
    {
        var frame = easel.Frame;
        using var builder = new SKPathBuilder();
        var radius = Radius * easel.Sizes.Plates;
        var outline = frame.Rect(
            group.X1 - radius, group.Y1 - radius, group.X2 - group.X1 + 2 * radius, group.Y2 - group.Y1 + 2 * radius);
        builder.AddRoundRect(new SKRoundRect(outline, frame.Length(radius)));
        using var path = builder.Detach();
        easel.Brush.Line(path, frame.Length(Width), easel.Palette.Link);
    }
}
