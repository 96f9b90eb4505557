using Companion.Drawing.Colours;
using SkiaSharp;

namespace Companion.Drawing.Stills;

/// <summary>What the painter of a shape has at hand.</summary>
internal sealed record Easel(EdgedBrush Brush, Lettering Letters, Palette Palette, BoardFrame Frame)
{
    internal SKCanvas Canvas => Brush.Canvas;
}
