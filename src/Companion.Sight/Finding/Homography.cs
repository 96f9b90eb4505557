namespace Companion.Sight.Finding;

/// <summary>The way a plane is seen from aside: takes points of one picture of it to points of another.</summary>
internal sealed class Homography
{
    // Row by row, the last entry 1: x' = (m0 x + m1 y + m2) / w, y' = (m3 x + m4 y + m5) / w, w = m6 x + m7 y + 1.
    private readonly double[] _m;

    private Homography(double[] m) => _m = m;

    /// <summary>Where a point goes.</summary>
    /// <param name="point">The point.</param>
    public PixelPoint this[PixelPoint point]
    {
        get
        {
            var w = _m[6] * point.X + _m[7] * point.Y + 1;
            return new((float)((_m[0] * point.X + _m[1] * point.Y + _m[2]) / w), (float)((_m[3] * point.X + _m[4] * point.Y + _m[5]) / w));
        }
    }

    /// <summary>The one that takes points to others, as near as can be in the least squares; null where none does.</summary>
    /// <param name="pairs">Four pairs or more.</param>
    public static Homography? Fit(IReadOnlyList<(PixelPoint From, PixelPoint To)> pairs)
    {
        // Normal equations of the two linear equations that each pair gives (the direct linear transform, with the last entry 1).
        // In units of a thousand pixels, so that all entries are of one order.
        const double Unit = 1000;
        var a = new double[8, 9];
        foreach (var (from, to) in pairs)
        {
            var (x, y, u, v) = (from.X / Unit, from.Y / Unit, to.X / Unit, to.Y / Unit);
            Add(a, [x, y, 1, 0, 0, 0, -x * u, -y * u, u]);
            Add(a, [0, 0, 0, x, y, 1, -x * v, -y * v, v]);
        }

        return Solve(a) is { } m ? new([m[0], m[1], m[2] * Unit, m[3], m[4], m[5] * Unit, m[6] / Unit, m[7] / Unit]) : null;
    }

    /// <summary>The one that takes an upright rectangle to a place.</summary>
    /// <param name="left">The rectangle's left edge.</param>
    /// <param name="top">Its upper edge.</param>
    /// <param name="side">Its width and height.</param>
    /// <param name="place">The place.</param>
    public static Homography? FromSquare(float left, float top, float side, GridPlace place) => Fit(
    [
        (new(left, top), place.TopLeft),
        (new(left + side, top), place.TopRight),
        (new(left + side, top + side), place.BottomRight),
        (new(left, top + side), place.BottomLeft),
    ]);

    private static void Add(double[,] a, ReadOnlySpan<double> row)
    {
        for (var i = 0; i < 8; i++)
            for (var j = 0; j < 9; j++)
                a[i, j] += row[i] * row[j];
    }

    // Gauss with pivots.
    private static double[]? Solve(double[,] a)
    {
        for (var column = 0; column < 8; column++)
        {
            var pivot = column;
            for (var row = column + 1; row < 8; row++)
                pivot = Math.Abs(a[row, column]) > Math.Abs(a[pivot, column]) ? row : pivot;
            if (Math.Abs(a[pivot, column]) < 1e-12)
                return null;
            for (var j = 0; j < 9; j++)
                (a[column, j], a[pivot, j]) = (a[pivot, j], a[column, j]);
            for (var row = 0; row < 8; row++)
            {
                if (row == column)
                    continue;
                var factor = a[row, column] / a[column, column];
                for (var j = column; j < 9; j++)
                    a[row, j] -= factor * a[column, j];
            }
        }

        return [.. Enumerable.Range(0, 8).Select(row => a[row, 8] / a[row, row])];
    }
}
