namespace Companion.Sight.Finding;

/// <summary>
/// The four sides of a web of lines that is turned by less than an eighth. Where a grid has no border its lines end in the open: their
/// ends lie on the sides, and its corners are empty.
/// </summary>
internal static class WebSides
{
    /// <summary>Where the sides meet; null where they do not.</summary>
    /// <param name="points">The web's pixels.</param>
    public static GridPlace? Of(List<(int X, int Y)> points)
    {
        var top = Side([.. points]);
        var bottom = Side([.. points.Select(at => (at.X, -at.Y))]) is { } below ? (-below.Slope, -below.At) : ((float, float)?)null;
        var left = Side([.. points.Select(at => (at.Y, at.X))]);
        var right = Side([.. points.Select(at => (at.Y, -at.X))]) is { } beyond ? (-beyond.Slope, -beyond.At) : ((float, float)?)null;
        return top is { } t && bottom is { } b && left is { } l && right is { } r
            ? new(Meet(t, l), Meet(t, r), Meet(b, r), Meet(b, l))
            : null;
    }

    // That edge of the upper hull which lies above the middle: y = slope x + at.
    private static (float Slope, float At)? Side((int X, int Y)[] points)
    {
        var highest = points.GroupBy(at => at.X).Select(column => (X: column.Key, Y: column.Min(at => at.Y))).OrderBy(at => at.X);
        var hull = new List<(int X, int Y)>();
        foreach (var at in highest)
        {
            while (hull.Count > 1 && IsBelow(hull[^2], hull[^1], at))
                hull.RemoveAt(hull.Count - 1);
            hull.Add(at);
        }

        var middle = (hull[0].X + hull[^1].X) / 2f;
        for (var index = 1; index < hull.Count; index++)
        {
            var (from, to) = (hull[index - 1], hull[index]);
            if (to.X < middle)
                continue;
            var slope = (to.Y - from.Y) / (float)(to.X - from.X);
            return (slope, from.Y - slope * from.X);
        }

        return null;
    }

    // Whether the middle one of three lies on or below the line from the first to the last, as rows count.
    private static bool IsBelow((int X, int Y) first, (int X, int Y) middle, (int X, int Y) last) =>
        (long)(middle.Y - first.Y) * (last.X - first.X) >= (long)(last.Y - first.Y) * (middle.X - first.X);

    // Of a level line y = slope x + at and an upright one x = slope y + at.
    private static PixelPoint Meet((float Slope, float At) level, (float Slope, float At) upright)
    {
        var y = (level.Slope * upright.At + level.At) / (1 - level.Slope * upright.Slope);
        return new(upright.Slope * y + upright.At, y);
    }
}
