namespace Companion.Sight.Finding;

/// <summary>Finds grids whose lines run along the rows and columns of the picture, as on screens.</summary>
internal static class StraightFinder
{
    // Bold lines first; lines that can hardly be seen need a look at every small step.
    private static readonly byte[] _steps = [20, 6];

    // Bundles that are looked at in each direction, and pairs of them that are fitted.
    private const int MostBundles = 40;
    private const int MostPairs = 24;

    /// <summary>The grid; null where none is seen.</summary>
    /// <param name="frame">The picture.</param>
    public static GridFit? Find(Frame frame)
    {
        foreach (var least in _steps)
        {
            var map = EdgeMap.Of(frame, least);
            var level = Bundle.Of(EdgeRuns.Horizontal(map));
            var upright = Bundle.Of(EdgeRuns.Vertical(map));
            var best = Best(frame, Pairs(level, upright));
            if (best is not null)
                return best;
        }

        return null;
    }

    private static GridFit? Best(Frame frame, IEnumerable<(Bundle Level, Bundle Upright)> pairs)
    {
        GridFit? best = null;
        foreach (var (level, upright) in pairs)
        {
            var fit = LineFit.Of(frame, GridLines.Even(level.From, level.To), GridLines.Even(upright.From, upright.To));
            if (!fit.IsGrid)
                continue;
            if (fit.IsClear)
                return fit;
            if (best is null || fit.Score - fit.Between / 2 > best.Score - best.Between / 2)
                best = fit;
        }

        return best;
    }

    private static IEnumerable<(Bundle Level, Bundle Upright)> Pairs(List<Bundle> level, List<Bundle> upright)
    {
        const float MostStretch = 1.12f;
        const int FewestLines = 4;
        var pairs =
            from rows in level.Take(MostBundles)
            from columns in upright.Take(MostBundles)
            where Math.Max(rows.Length, columns.Length) <= MostStretch * Math.Min(rows.Length, columns.Length)
            let lines = (Rows: rows.CountWithin(columns.From, columns.To), Columns: columns.CountWithin(rows.From, rows.To))
            where lines.Rows >= FewestLines && lines.Columns >= FewestLines
            orderby lines.Rows + lines.Columns descending
            select (rows, columns);
        return pairs.Take(MostPairs);
    }
}
