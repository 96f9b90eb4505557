using Companion.Engine.Proofs;

namespace Companion.Engine.Rules.Chains;

/// <summary>
/// Finds loops of single candidates: for each candidate a shortest one by which it goes. Kept for the thread's last board.
/// </summary>
internal sealed class LoopFinder : ShortestFirst
{
    [ThreadStatic]
    private static LoopFinder? _ofThread;

    private Board? _board;
    private ChainGraph _graph = null!;

    private LoopFinder()
    {
    }

    /// <inheritdoc/>
    internal override ChainGraph Graph => _graph;

    /// <summary>The finder, with the board read.</summary>
    internal static LoopFinder For(Board board)
    {
        var finder = _ofThread ??= new();
        finder._graph = ChainFinder.For(board, ChainKind.Plain).Graph;
        if (!ReferenceEquals(finder._board, board))
            finder.Read(board);
        return finder;
    }

    /// <inheritdoc/>
    protected override bool Trace(int single)
    {
        var seen = _graph.Weak(single);
        for (var from = 0; from < _graph.Count; from++)
        {
            if (seen.Has(from) && Trace(single, from))
                return true;
        }

        return false;
    }

    /// <inheritdoc/>
    protected override Deduction Deduce(RuleId rule, Board board) => ChainPath.DeduceLoop(rule, board, _graph, Path);

    // Of the loops through this node, one that comes back to it from another that the candidate sees.
    private bool Trace(int single, int from)
    {
        Walk.Begin(_graph, _graph.Strong(from));
        while (!Walk.IsOver && Walk.Level < Depths[single])
            Walk.Advance();
        Span<ulong> start = stackalloc ulong[_graph.Words];
        start.Set(from);
        Span<ulong> ends = stackalloc ulong[_graph.Words];
        _graph.Weak(from).CopyTo(ends);
        for (var word = 0; word < ends.Length; word++)
            ends[word] &= _graph.Weak(single)[word];
        return Walk.Trace(start, ends, Path);
    }

    private void Read(Board board)
    {
        _board = board;
        Depths.Fill(Endless);
        for (var from = 0; from < _graph.Count; from++)
        {
            for (Walk.Begin(_graph, _graph.Strong(from)); !Walk.IsOver; Walk.Advance())
                Close(from);
        }
    }

    // The loops that the walk's last level closes: back to the start, which cannot be true together with where it has come to.
    private void Close(int from)
    {
        foreach (var to in new SharedNodes(Walk.Fresh, _graph.Weak(from)))
        {
            foreach (var single in new SharedNodes(_graph.Weak(from), _graph.Weak(to)))
                Depths[single] = Math.Min(Depths[single], Walk.Level);
        }
    }
}
