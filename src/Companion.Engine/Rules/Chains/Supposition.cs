namespace Companion.Engine.Rules.Chains;

/// <summary>
/// What follows along chains where a candidate is supposed to be true, or false: which others are false, and by how many links.
/// </summary>
/// <param name="most">The most strong links of a chain.</param>
internal sealed class Supposition(int most = int.MaxValue)
{
    private readonly ChainWalk _walk = new();
    private readonly int[] _links = new int[Candidate.Count];
    private ulong[] _false = [];
    private ulong[] _starts = [];
    private ulong[] _first = [];
    private ChainGraph _graph = null!;
    private int _single;
    private bool _holds;

    /// <summary>The candidates that are false, as a row.</summary>
    internal ReadOnlySpan<ulong> False => _false.AsSpan(0, _graph.Words);

    /// <summary>Whether what was supposed to be false turns out to be true by a chain of its own.</summary>
    internal bool RefutesItself => !_holds && _walk.Visited.Has(_single);

    /// <summary>How many links lead to a candidate that is false, once they were counted.</summary>
    internal int LinksTo(int single) => _links[single];

    /// <summary>Follows all chains from this candidate.</summary>
    /// <param name="graph">The nodes and their links.</param>
    /// <param name="single">The candidate.</param>
    /// <param name="holds">Whether it is supposed to be true.</param>
    internal void Follow(ChainGraph graph, int single, bool holds)
    {
        (_graph, _single, _holds) = (graph, single, holds);
        if (_false.Length < graph.Words)
            (_false, _starts, _first) = (new ulong[graph.Words * 2], new ulong[graph.Words * 2], new ulong[graph.Words * 2]);
        SetStarts();
        var gone = _false.AsSpan(0, graph.Words);
        Starts.CopyTo(gone);
        for (Restart(); !_walk.IsOver && _walk.Level <= most; _walk.Advance())
        {
            foreach (var node in _walk.At(_walk.Level))
                gone.Add(graph.Excluded(node));
        }
    }

    /// <summary>Counts the links to all candidates that are false.</summary>
    internal void CountLinks()
    {
        _links.AsSpan(0, _graph.Singles).Fill(int.MaxValue);
        Note(Starts, links: _holds ? 1 : 0);
        for (Restart(); !_walk.IsOver && _walk.Level <= most; _walk.Advance())
        {
            foreach (var node in _walk.At(_walk.Level))
                Note(_graph.Excluded(node), LinksAt(_walk.Level));
        }
    }

    /// <summary>
    /// The nodes of a shortest chain to a candidate that is false, two for each strong link, from the end that excludes it back to
    /// the start; none where the start excludes it or is it. The links must have been counted.
    /// </summary>
    internal void Trace(int single, List<int> path)
    {
        path.Clear();
        if (_links[single] <= 1)
            return;
        for (Restart(); LinksAt(_walk.Level) < _links[single];)
            _walk.Advance();
        _walk.Trace(Starts, _graph.Excluded(single), path);
    }

    private ReadOnlySpan<ulong> Starts => _starts.AsSpan(0, _graph.Words);

    private int LinksAt(int level) => _holds ? level * 2 + 1 : level * 2;

    // The nodes that are false first: what a true candidate excludes, or the false one itself.
    private void SetStarts()
    {
        var starts = _starts.AsSpan(0, _graph.Words);
        starts.Clear();
        if (_holds)
            starts.Add(_graph.Excluded(_single));
        else
            starts.Set(_single);
    }

    private void Restart()
    {
        var first = _first.AsSpan(0, _graph.Words);
        first.Clear();
        foreach (var node in new SharedNodes(Starts, Starts))
            first.Add(_graph.Strong(node));
        _walk.Begin(_graph, first);
    }

    private void Note(ReadOnlySpan<ulong> row, int links)
    {
        foreach (var node in new SharedNodes(row, row))
        {
            if (node < _graph.Singles)
                _links[node] = Math.Min(_links[node], links);
        }
    }
}
