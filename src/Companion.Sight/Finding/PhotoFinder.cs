namespace Companion.Sight.Finding;

/// <summary>Finds a grid that is seen from aside, as on photographs: its web of lines, its corners, then every crossing of lines.</summary>
internal static class PhotoFinder
{
    private const int Passes = 8;

    // A rough outline may need some passes before the lines fit; after these they must.
    private const int RoughPasses = 3;

    // In pixels of the photograph.
    private const float Settled = 0.7f;

    /// <summary>The grid's corners; null where none is seen.</summary>
    /// <param name="photo">The photograph.</param>
    public static GridPlace? Find(Frame photo)
    {
        foreach (var mask in InkMask.Of(photo))
        {
            foreach (var outline in Outlines.Of(mask))
            {
                if (Refine(photo, outline) is { } place)
                    return place;
            }
        }

        return null;
    }

    private static GridPlace? Refine(Frame photo, GridPlace place)
    {
        for (var pass = 0; pass < Passes; pass++)
        {
            if (Straightened.Of(photo, place) is not { } square)
                return null;
            var even = GridLines.Even(square.Margin, square.Margin + square.Side);
            var fit = LineFit.Of(square.Frame, even, even);
            if (pass >= RoughPasses && !fit.IsGrid)
                return null;
            // Crossings as they are seen, against where a square grid has them: what takes the one to the other straightens the grid.
            var way = Homography.Fit([.. Crossings.Of(square.Frame, fit).Select(crossing => (even.Crossing(crossing.Column, crossing.Row), crossing.At))]);
            if (way is null)
                return null;
            var (right, down) = fit.IsGrid ? (fit.Columns.Shift * even.Pitch, fit.Rows.Shift * even.Pitch) : (0, 0);
            PixelPoint Corner(float x, float y) => square.ToPhoto[way[new(x, y)]];
            GridPlace At(float x, float y) =>
                new(Corner(even.At[0] + x, even.At[0] + y), Corner(even.At[^1] + x, even.At[0] + y), Corner(even.At[^1] + x, even.At[^1] + y), Corner(even.At[0] + x, even.At[^1] + y));
            var next = At(right, down);
            if (fit.IsGrid && Moved(place, next) <= Settled)
            {
                var further =
                    (from shift in fit.Columns.MayLieFurther().Select(lines => At(lines * even.Pitch, 0)).Concat(fit.Rows.MayLieFurther().Select(lines => At(0, lines * even.Pitch)))
                     where IsSeenBetter(photo, shift, fit)
                     select shift).FirstOrDefault();
                if (further is null)
                    return next;
                next = further;
            }

            place = next;
        }

        return null;
    }

    private static bool IsSeenBetter(Frame photo, GridPlace place, GridFit than)
    {
        const float Better = 0.3f;
        if (Straightened.Of(photo, place) is not { } square)
            return false;
        var even = GridLines.Even(square.Margin, square.Margin + square.Side);
        var fit = LineFit.Of(square.Frame, even, even);
        return fit.IsGrid && fit.Columns.Support.Sum() + fit.Rows.Support.Sum() >= than.Columns.Support.Sum() + than.Rows.Support.Sum() + Better;
    }

    private static float Moved(GridPlace before, GridPlace after) => Math.Max(
        Math.Max(Moved(before.TopLeft, after.TopLeft), Moved(before.TopRight, after.TopRight)),
        Math.Max(Moved(before.BottomRight, after.BottomRight), Moved(before.BottomLeft, after.BottomLeft)));

    private static float Moved(PixelPoint before, PixelPoint after) => Math.Max(Math.Abs(before.X - after.X), Math.Abs(before.Y - after.Y));
}
