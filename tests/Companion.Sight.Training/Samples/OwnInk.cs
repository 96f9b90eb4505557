namespace Companion.Sight.Samples;

/// <summary>Keeps of a plane what hangs together with the glyph, as what finds glyphs does: nothing of what stands beside it.</summary>
internal static class OwnInk
{
    // A glyph's ink reaches down to this part of the darkest; what is fainter is its soft edge, of which one pixel stays.
    private const float Faint = 0.22f;

    // Of the box, on each side: what comes no farther into it than this is none of the glyph's.
    private const float Edge = 0.2f;

    /// <summary>The glyph's own ink.</summary>
    /// <param name="plane">All ink.</param>
    /// <param name="box">Where the glyph is; ink outside it is not looked at.</param>
    public static InkPlane Of(InkPlane plane, PixelBox box)
    {
        var (left, top) = (Math.Max(0, (int)box.Left), Math.Max(0, (int)box.Top));
        var (right, bottom) = (Math.Min(plane.Width, (int)MathF.Ceiling(box.Right)), Math.Min(plane.Height, (int)MathF.Ceiling(box.Bottom)));
        var threshold = Faint * Peak(plane, left, top, right, bottom);
        var (x, y) = (Edge * (right - left), Edge * (bottom - top));
        var own = new bool[plane.Width * plane.Height];
        var open = new Stack<(int X, int Y)>();
        for (var row = (int)(top + y); row < bottom - y; row++)
            for (var column = (int)(left + x); column < right - x; column++)
                open.Push((column, row));
        while (open.TryPop(out var at))
        {
            if (at.X < left || at.X >= right || at.Y < top || at.Y >= bottom || own[at.Y * plane.Width + at.X] || plane.Row(at.Y)[at.X] <= threshold)
                continue;
            own[at.Y * plane.Width + at.X] = true;
            for (var side = 0; side < 9; side++)
                open.Push((at.X + side % 3 - 1, at.Y + side / 3 - 1));
        }

        var ink = new float[own.Length];
        for (var row = top; row < bottom; row++)
            for (var column = left; column < right; column++)
                if (own[row * plane.Width + column])
                    CopyAround(plane, column, row, ink);
        return new(plane.Width, plane.Height, ink);
    }

    private static float Peak(InkPlane plane, int left, int top, int right, int bottom)
    {
        var peak = 0f;
        for (var row = top; row < bottom; row++)
            for (var column = left; column < right; column++)
                peak = Math.Max(peak, plane.Row(row)[column]);
        return peak;
    }

    private static void CopyAround(InkPlane plane, int x, int y, float[] ink)
    {
        for (var row = Math.Max(0, y - 1); row <= Math.Min(plane.Height - 1, y + 1); row++)
            for (var column = Math.Max(0, x - 1); column <= Math.Min(plane.Width - 1, x + 1); column++)
                ink[row * plane.Width + column] = plane.Row(row)[column];
    }
}
