using SkiaSharp;

namespace Companion.Sight.Tests.Finding;

/// <summary>How a camera sees a flat square that looks at it from aside.</summary>
internal static class Warp
{
    /// <summary>Takes a square's corners to four points, by the closed form of P. Heckbert (Fundamentals of Texture Mapping and Image Warping, 1989).</summary>
    /// <param name="to">The points, from the upper left corner on clockwise.</param>
    /// <param name="left">The square's left edge.</param>
    /// <param name="top">Its upper edge.</param>
    /// <param name="side">Its side.</param>
    public static SKMatrix To(SKPoint[] to, float left, float top, float side)
    {
        var (dx1, dx2, dx3) = (to[1].X - to[2].X, to[3].X - to[2].X, to[0].X - to[1].X + to[2].X - to[3].X);
        var (dy1, dy2, dy3) = (to[1].Y - to[2].Y, to[3].Y - to[2].Y, to[0].Y - to[1].Y + to[2].Y - to[3].Y);
        var determinant = dx1 * dy2 - dx2 * dy1;
        var (g, h) = ((dx3 * dy2 - dx2 * dy3) / determinant, (dx1 * dy3 - dx3 * dy1) / determinant);
        var unit = new SKMatrix(
            to[1].X - to[0].X + g * to[1].X, to[3].X - to[0].X + h * to[3].X, to[0].X,
            to[1].Y - to[0].Y + g * to[1].Y, to[3].Y - to[0].Y + h * to[3].Y, to[0].Y, g, h, 1);
        return unit.PreConcat(SKMatrix.CreateScale(1 / side, 1 / side)).PreConcat(SKMatrix.CreateTranslation(-left, -top));
    }
}
