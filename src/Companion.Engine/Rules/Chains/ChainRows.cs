namespace Companion.Engine.Rules.Chains;

/// <summary>
/// How the nodes of a graph are linked, as a row of bits for each, so that a walk takes all its next steps at once. Made again for
/// each board in the same memory.
/// </summary>
internal sealed class ChainRows
{
    private ulong[] _weak = [];
    private ulong[] _strong = [];
    private ulong[] _step = [];
    private ulong[] _follows = [];
    private ulong[] _excluded = [];
    private ulong[] _linked = [];
    private ChainGraph _graph = null!;
    private Board _board = Board.Blank;

    /// <summary>The length of a row.</summary>
    internal int Words { get; private set; }

    /// <summary>See <see cref="ChainGraph.Linked"/>.</summary>
    internal ReadOnlySpan<ulong> Linked => _linked.AsSpan(0, Words);

    /// <summary>See <see cref="ChainGraph.Weak"/>.</summary>
    internal ReadOnlySpan<ulong> Weak(int node) => Row(_weak, node);

    /// <summary>See <see cref="ChainGraph.Strong"/>.</summary>
    internal ReadOnlySpan<ulong> Strong(int node) => Row(_strong, node);

    /// <summary>See <see cref="ChainGraph.Excluded"/>.</summary>
    internal ReadOnlySpan<ulong> Excluded(int node) => Row(_excluded, node);

    /// <summary>See <see cref="ChainGraph.Step"/>.</summary>
    internal ReadOnlySpan<ulong> Step(int node) => Row(_step, node);

    /// <summary>See <see cref="ChainGraph.Follows"/>.</summary>
    internal ReadOnlySpan<ulong> Follows(int node) => Row(_follows, node);

    /// <summary>Makes the rows of a graph whose nodes and strong links are known.</summary>
    /// <param name="graph">The graph.</param>
    /// <param name="board">Its board.</param>
    /// <param name="seen">For each node the cells that cannot hold its digit where it is true.</param>
    internal void Make(ChainGraph graph, Board board, List<CellSet> seen)
    {
        (_graph, _board) = (graph, board);
        Words = NodeBits.WordsFor(graph.Count);
        Reserve(ref _strong);
        Reserve(ref _excluded);
        if (_linked.Length < Words)
            _linked = new ulong[Words * 2];
        _linked.AsSpan(0, Words).Clear();
        foreach (var (one, other, _, _) in graph.Links)
        {
            Row(_strong, one).Set(other);
            Row(_strong, other).Set(one);
            Row(_linked, 0).Set(one);
            Row(_linked, 0).Set(other);
        }

        ExcludeSeen(seen);
        if (graph.Kind.HasFlag(ChainKind.WithinCells))
        {
            ExcludeWithinCells();
            _weak = _excluded;
            Combine(_weak, graph.Count, ref _step);
            _follows = _step;
        }
        else
        {
            Reserve(ref _weak);
            _excluded.AsSpan(0, graph.Count * Words).CopyTo(_weak);
            ExcludeWithinCells();
            Combine(_weak, graph.Count, ref _step);
            Combine(_excluded, graph.Singles, ref _follows);
        }
    }

    // For each of the first nodes, what is linked strongly with any in its row.
    private void Combine(ulong[] rows, int count, ref ulong[] combined)
    {
        Reserve(ref combined);
        for (var node = 0; node < count; node++)
        {
            foreach (var other in new SharedNodes(Row(rows, node), Linked))
                Row(combined, node).Add(Strong(other));
        }
    }

    private void Reserve(ref ulong[] rows)
    {
        if (rows.Length < _graph.Count * Words)
            rows = new ulong[_graph.Count * Words * 5 / 4];
        rows.AsSpan(0, _graph.Count * Words).Clear();
    }

    private Span<ulong> Row(ulong[] rows, int node) => rows.AsSpan(node * Words, Words);

    // The nodes of the same digit. A group excludes what each of its cells does.
    private void ExcludeSeen(List<CellSet> seen)
    {
        for (var node = 0; node < _graph.Count; node++)
        {
            var digit = _graph[node].Digit;
            foreach (var cell in _board[digit] & seen[node])
                Row(_excluded, _graph.NodeOf(new Candidate(cell, digit))).Set(node);
        }

        for (var node = _graph.Singles; node < _graph.Count; node++)
        {
            var (digit, cells) = _graph[node];
            var excluded = Row(_excluded, node);
            Excluded(_graph.NodeOf(new Candidate(cells.First, digit))).CopyTo(excluded);
            foreach (var cell in cells)
                excluded.Intersect(Excluded(_graph.NodeOf(new Candidate(cell, digit))));
        }
    }

    private void ExcludeWithinCells()
    {
        foreach (var cell in _board.Open)
        {
            foreach (var digit in _board[cell])
            {
                foreach (var other in _board[cell].Without(digit))
                    Row(_excluded, _graph.NodeOf(new Candidate(cell, digit))).Set(_graph.NodeOf(new Candidate(cell, other)));
            }
        }
    }
}
