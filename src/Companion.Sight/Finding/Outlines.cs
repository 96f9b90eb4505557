namespace Companion.Sight.Finding;

/// <summary>Finds large webs of lines in a photograph and their four corners.</summary>
internal static class Outlines
{
    // Of the photograph's shorter side: smaller grids have too few pixels, or are not what it was taken for.
    private const float LeastSide = 0.25f;
    private const float MostStretch = 2;
    private const int Most = 4;

    /// <summary>The corners of the largest webs, in pixels of the photograph.</summary>
    /// <param name="mask">What is ink.</param>
    public static IEnumerable<GridPlace> Of(InkMask mask)
    {
        var least = LeastSide * Math.Min(mask.Width, mask.Height);
        return Webs(mask)
            .Where(web => Math.Min(web.Width, web.Height) >= least && Math.Max(web.Width, web.Height) <= MostStretch * Math.Min(web.Width, web.Height))
            .OrderByDescending(web => web.Width * web.Height)
            .Take(Most)
            .SelectMany(web => web.Places(mask.Scale));
    }

    private static List<Web> Webs(InkMask mask)
    {
        var isTaken = new bool[mask.IsInk.Length];
        var webs = new List<Web>();
        var open = new Stack<int>();
        for (var start = 0; start < isTaken.Length; start++)
        {
            if (!mask.IsInk[start] || isTaken[start])
                continue;
            var web = new Web();
            isTaken[start] = true;
            open.Push(start);
            while (open.TryPop(out var pixel))
            {
                var (x, y) = (pixel % mask.Width, pixel / mask.Width);
                web.Add(x, y);
                for (var ny = Math.Max(0, y - 1); ny <= Math.Min(mask.Height - 1, y + 1); ny++)
                {
                    for (var nx = Math.Max(0, x - 1); nx <= Math.Min(mask.Width - 1, x + 1); nx++)
                    {
                        var next = ny * mask.Width + nx;
                        if (!mask.IsInk[next] || isTaken[next])
                            continue;
                        isTaken[next] = true;
                        open.Push(next);
                    }
                }
            }

            webs.Add(web);
        }

        return webs;
    }

    // A grid that is turned by less than an eighth has its corners farthest out along the diagonals.
    private sealed class Web
    {
        private (int X, int Y) _topLeft = (int.MaxValue / 4, int.MaxValue / 4), _bottomRight = (-1, -1), _topRight = (-1, int.MaxValue / 4), _bottomLeft = (int.MaxValue / 4, -1);
        private readonly List<(int X, int Y)> _points = [];
        private int _left = int.MaxValue, _top = int.MaxValue, _right, _bottom;

        public int Width => _right - _left;

        public int Height => _bottom - _top;

        public void Add(int x, int y)
        {
            _points.Add((x, y));
            (_left, _top, _right, _bottom) = (Math.Min(_left, x), Math.Min(_top, y), Math.Max(_right, x + 1), Math.Max(_bottom, y + 1));
            if (x + y < _topLeft.X + _topLeft.Y)
                _topLeft = (x, y);
            if (x + y > _bottomRight.X + _bottomRight.Y)
                _bottomRight = (x, y);
            if (x - y > _topRight.X - _topRight.Y)
                _topRight = (x, y);
            if (x - y < _bottomLeft.X - _bottomLeft.Y)
                _bottomLeft = (x, y);
        }

        /// <summary>By its outermost points; and by its four sides, which the ends of the lines of a grid without a border make out.</summary>
        public IEnumerable<GridPlace> Places(float scale)
        {
            yield return ByCorners(scale);
            if (WebSides.Of(_points) is { } place)
                yield return new GridPlace(Scaled(place.TopLeft, scale), Scaled(place.TopRight, scale), Scaled(place.BottomRight, scale), Scaled(place.BottomLeft, scale));
        }

        private static PixelPoint Scaled(PixelPoint point, float scale) => new(point.X * scale, point.Y * scale);

        private GridPlace ByCorners(float scale) => new(
            new(_topLeft.X * scale, _topLeft.Y * scale),
            new((_topRight.X + 1) * scale, _topRight.Y * scale),
            new((_bottomRight.X + 1) * scale, (_bottomRight.Y + 1) * scale),
            new(_bottomLeft.X * scale, (_bottomLeft.Y + 1) * scale));
    }
}
