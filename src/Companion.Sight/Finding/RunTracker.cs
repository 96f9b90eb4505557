namespace Companion.Sight.Finding;

/// <summary>Joins the edges of one row or column to runs, over the gaps that crossing lines and rounded corners of cells leave.</summary>
internal struct RunTracker
{
    // The thickest lines that cross another one without an edge of their own, in pixels.
    private const int Crossing = 8;

    // Cells drawn apart from each other have gaps between their rounded corners; no cell is longer than this.
    private const int LongestCell = 150;
    private const int WidestGap = 40;

    private int _from;
    private int _pieceFrom;
    private int _last;
    private int _covered;

    /// <summary>Takes the next edge.</summary>
    /// <param name="position">Where along the row or column; each one after the last one.</param>
    /// <param name="ended">The run that ended before it, at coordinate 0, if <see cref="End"/> would have given it.</param>
    /// <returns>Whether a run ended.</returns>
    public bool Take(int position, out EdgeRun ended)
    {
        ended = default;
        var isNew = _covered == 0;
        var gap = position - _last - 1;
        if (!isNew && gap == 0)
        {
            _last = position;
            _covered++;
            return false;
        }

        var piece = _last - _pieceFrom + 1;
        var bridged = piece < LongestCell ? Math.Max(Crossing, Math.Min(piece / 2, WidestGap)) : Crossing;
        if (isNew || gap > bridged)
        {
            var hasEnded = End(out ended);
            (_from, _covered) = (position, 0);
            _pieceFrom = _last = position;
            _covered = 1;
            return hasEnded;
        }

        (_pieceFrom, _last) = (position, position);
        _covered++;
        return false;
    }

    /// <summary>What has been joined so far.</summary>
    /// <param name="run">The run, at coordinate 0.</param>
    /// <returns>Whether it is long and dense enough to be a line of a grid.</returns>
    public readonly bool End(out EdgeRun run)
    {
        run = new(0, _from, _last + 1);
        return _covered > 0 && run.Length >= EdgeRuns.Shortest && 2 * _covered >= run.Length;
    }
}
