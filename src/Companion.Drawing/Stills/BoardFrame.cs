using Companion.Drawing.Pictures;
using SkiaSharp;

namespace Companion.Drawing.Stills;

/// <summary>Where a board lies in an image: turns board units into pixels.</summary>
/// <param name="Left">The board's left edge in pixels.</param>
/// <param name="Top">The board's top edge in pixels.</param>
/// <param name="CellSize">Pixels of one board unit; whole on a still, so that lines come out sharp.</param>
internal readonly record struct BoardFrame(float Left, float Top, float CellSize)
{
    internal float Side => 9 * CellSize;

    internal SKRect Bounds => Rect(0, 0, 9, 9);

    internal float Length(double units) => (float)units * CellSize;

    internal SKPoint Point(double x, double y) => new(Left + Length(x), Top + Length(y));

    internal SKPoint Point(BoardPoint point) => Point(point.X, point.Y);

    internal SKRect Rect(double x, double y, double width, double height) =>
        SKRect.Create(Left + Length(x), Top + Length(y), Length(width), Length(height));
}
