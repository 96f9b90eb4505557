namespace Companion.Sight.Finding;

/// <summary>Finds a grid that is seen from aside, as on photographs: its web of lines, its corners, then every crossing of lines.</summary>
internal static class PhotoFinder
{
    private const int Passes = 6;

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
            PixelPoint Corner(int column, int row) => square.ToPhoto[way[new(even.At[column] + right, even.At[row] + down)]];
            var next = new GridPlace(Corner(0, 0), Corner(9, 0), Corner(9, 9), Corner(0, 9));
            if (fit.IsGrid && Moved(place, next) <= Settled)
                return next;
            place = next;
        }

        return null;
    }

    private static float Moved(GridPlace before, GridPlace after) => Math.Max(
        Math.Max(Moved(before.TopLeft, after.TopLeft), Moved(before.TopRight, after.TopRight)),
        Math.Max(Moved(before.BottomRight, after.BottomRight), Moved(before.BottomLeft, after.BottomLeft)));

    private static float Moved(PixelPoint before, PixelPoint after) => Math.Max(Math.Abs(before.X - after.X), Math.Abs(before.Y - after.Y));
}
