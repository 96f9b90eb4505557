namespace Companion.Engine.Rules.Chains;

/// <summary>
/// What follows along chains where a candidate is supposed to be true, or false: which others are false, and by how many links.
/// </summary>
/// <param name="oneLink">Whether chains have one strong link at most.</param>
internal sealed class Supposition(bool oneLink)
{
    private readonly ChainWalk _walk = new();
    private readonly int[] _links = new int[Candidate.Count];
    private ulong[] _false = [];
    private ulong[] _true = [];
    private ulong[] _itself = [];
    private ulong[] _level = [];
    private ulong[] _counted = [];
    private ChainGraph _graph = null!;
    private int _words; // Of a row of candidates: groups are false where all their candidates are, and nobody asks about them.
    private int _single;
    private bool _holds;

    /// <summary>The candidates that are false, as a row that leaves out groups of them.</summary>
    internal ReadOnlySpan<ulong> False => _false.AsSpan(0, _words);

    /// <summary>Whether what was supposed turns out to be the other way by a chain of its own.</summary>
    internal bool RefutesItself => (_holds ? False : True).Has(_single);

    /// <summary>How many links lead to all of these, which are false, once the links were counted.</summary>
    internal int LinksTo(in CandidateSet candidates)
    {
        var links = 0;
        foreach (var candidate in candidates)
            links += _links[_graph.NodeOf(candidate)];
        return links;
    }

    /// <summary>Follows all chains from this candidate.</summary>
    /// <param name="chains">The nodes and what they reach.</param>
    /// <param name="single">The candidate.</param>
    /// <param name="holds">Whether it is supposed to be true.</param>
    internal void Follow(ChainFinder chains, int single, bool holds)
    {
        (_graph, _single, _holds) = (chains.Graph, single, holds);
        _words = NodeBits.WordsFor(_graph.Singles);
        if (_false.Length < _graph.Words)
        {
            (_false, _true, _itself) = (new ulong[_graph.Words * 2], new ulong[_graph.Words * 2], new ulong[_graph.Words * 2]);
            (_level, _counted) = (new ulong[_graph.Words * 2], new ulong[_graph.Words * 2]);
        }

        _itself.AsSpan().Clear();
        _itself.AsSpan().Set(single);
        if (oneLink)
            First.CopyTo(_true);
        else
            chains.Reached.From(First, _true.AsSpan(0, _graph.Words));
        Starts[.._words].CopyTo(_false);
        foreach (var node in new SharedNodes(True, True))
            _false.AsSpan(0, _words).Add(_graph.Excluded(node));
    }

    /// <summary>Counts the links to all candidates that are false.</summary>
    internal void CountLinks()
    {
        _links.AsSpan(0, _graph.Singles).Fill(int.MaxValue);
        _counted.AsSpan().Clear();
        Note(Starts[.._words], links: _holds ? 1 : 0);
        var level = _level.AsSpan(0, _words);
        for (_walk.Begin(_graph, First); !_walk.IsOver && !(oneLink && _walk.Level > 1); _walk.Advance())
        {
            level.Clear();
            foreach (var node in _walk.At(_walk.Level))
                level.Add(_graph.Excluded(node));
            Note(level, LinksAt(_walk.Level));
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
        for (_walk.Begin(_graph, First); LinksAt(_walk.Level) < _links[single];)
            _walk.Advance();
        _walk.Trace(Starts, _graph.Excluded(single), path);
    }

    private ReadOnlySpan<ulong> True => _true.AsSpan(0, _graph.Words);

    // The nodes that are false first: what a true candidate excludes, or the false one itself.
    private ReadOnlySpan<ulong> Starts => _holds ? _graph.Excluded(_single) : _itself.AsSpan(0, _graph.Words);

    // The nodes that are true by one strong link.
    private ReadOnlySpan<ulong> First => _holds ? _graph.Follows(_single) : _graph.Strong(_single);

    private int LinksAt(int level) => _holds ? level * 2 + 1 : level * 2;

    // Those that are false for the first time: the levels come in order.
    private void Note(ReadOnlySpan<ulong> row, int links)
    {
        var counted = _counted.AsSpan(0, _words);
        while (NodeBits.FirstBeside(row, counted) is var node && node >= 0 && node < _graph.Singles)
        {
            counted.Set(node);
            _links[node] = links;
        }
    }
}
