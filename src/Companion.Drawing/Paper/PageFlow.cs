namespace Companion.Drawing.Paper;

/// <summary>Fills pages with strips, from top to bottom.</summary>
/// <param name="height">How much a page holds.</param>
internal sealed class PageFlow(float height)
{
    // What is made to fill a page exactly comes out a little higher or lower.
    private const float Slack = 0.05f;

    private readonly List<List<(Strip Strip, float Top)>> _pages = [[]];
    private readonly List<Strip> _together = [];
    private float _filled;

    /// <summary>What is left of the page for what comes next.</summary>
    internal float Room => height - _filled - HeightOf(_together, isFirst: _filled == 0);

    internal void Add(IEnumerable<Strip> strips)
    {
        foreach (var strip in strips)
        {
            _together.Add(strip);
            if (!strip.StaysWithNext)
                Place();
        }
    }

    /// <summary>Begins another page, unless this one is still empty.</summary>
    internal void Break()
    {
        Place();
        if (_filled > 0)
            Turn();
    }

    /// <summary>The pages, each with its strips and where their top edges are.</summary>
    internal IReadOnlyList<IReadOnlyList<(Strip Strip, float Top)>> Pages()
    {
        Place();
        return _pages.FindAll(page => page.Count > 0 || _pages.Count == 1);
    }

    private static float HeightOf(List<Strip> strips, bool isFirst) =>
        strips.Sum(strip => strip.Gap + strip.Height) - (isFirst && strips.Count > 0 ? strips[0].Gap : 0);

    private void Place()
    {
        if (_filled > 0 && _filled + HeightOf(_together, isFirst: false) > height + Slack)
            Turn();
        foreach (var strip in _together)
        {
            // What belongs together may still be more than a page.
            if (_filled > 0 && _filled + strip.Gap + strip.Height > height + Slack)
                Turn();
            var top = _filled + (_filled > 0 ? strip.Gap : 0);
            _pages[^1].Add((strip, top));
            _filled = top + strip.Height;
        }

        _together.Clear();
    }

    private void Turn()
    {
        _pages.Add([]);
        _filled = 0;
    }
}
