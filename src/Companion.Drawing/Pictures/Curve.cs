namespace Companion.Drawing.Pictures;

/// <summary>A quadratic curve from one point to another, drawn towards a third.</summary>
internal readonly record struct Curve(BoardPoint From, BoardPoint Control, BoardPoint To)
{
    /// <summary>The curve whose middle stands off the straight line by this much, to its left if positive.</summary>
    internal static Curve Bowed(BoardPoint from, BoardPoint to, double bow)
    {
        var along = to - from;
        var across = along.Length == 0 ? default : new BoardPoint(along.Y, -along.X) * (1 / along.Length);
        return new(from, (from + to) * 0.5 + across * (2 * bow), to);
    }

    /// <summary>The point at a share of the way, 0 to 1.</summary>
    internal BoardPoint At(double share)
    {
        var rest = 1 - share;
        return From * (rest * rest) + Control * (2 * share * rest) + To * (share * share);
    }

    /// <summary>Points along the curve, about a tenth of a cell apart.</summary>
    internal IEnumerable<BoardPoint> Points()
    {
        var steps = 4 + (int)(10 * (From.DistanceTo(Control) + Control.DistanceTo(To)));
        for (var step = 0; step <= steps; step++)
            yield return At((double)step / steps);
    }
}
