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
    private ChainFinder _chains = null!;

    private LoopFinder()
    {
    }

    /// <inheritdoc/>
    internal override ChainGraph Graph => _chains.Graph;

    /// <summary>The finder, with the board read.</summary>
    internal static LoopFinder For(Board board)
    {
        var finder = _ofThread ??= new();
        finder._chains = ChainFinder.For(board, ChainKind.Plain);
        if (!ReferenceEquals(finder._board, board))
            finder.Read(board);
        return finder;
    }

    /// <inheritdoc/>
    protected override bool Trace(int single)
    {
        var seen = Graph.Weak(single);
        for (var from = 0; from < Graph.Count; from++)
        {
            if (seen.Has(from) && Trace(single, from))
                return true;
        }

        return false;
    }

    /// <inheritdoc/>
    protected override Deduction Deduce(RuleId rule, Board board) => ChainPath.DeduceLoop(rule, board, Graph, Path);

    // Of the loops through this node, one that comes back to it from another that the candidate sees.
    private bool Trace(int single, int from)
    {
        Walk.Begin(Graph, Graph.Strong(from));
        while (!Walk.IsOver && Walk.Level < Depths[single])
            Walk.Advance();
        Span<ulong> start = stackalloc ulong[Graph.Words];
        start.Set(from);
        Span<ulong> ends = stackalloc ulong[Graph.Words];
        Graph.Weak(from).CopyTo(ends);
        for (var word = 0; word < ends.Length; word++)
            ends[word] &= Graph.Weak(single)[word];
        return Walk.Trace(start, ends, Path);
    }

    private void Read(Board board)
    {
        _board = board;
        Depths.Fill(Endless);
        Span<ulong> reached = stackalloc ulong[Graph.Words];
        for (var from = 0; from < Graph.Count; from++)
        {
            _chains.Reached.From(Graph.Strong(from), reached);
            if (!Graph.Weak(from).Overlaps(reached))
                continue;
            for (Walk.Begin(Graph, Graph.Strong(from)); !Walk.IsOver; Walk.Advance())
                Close(from);
        }
    }

    // The loops that the walk's last level closes: back to the start, which cannot be true together with where it has come to.
    private void Close(int from)
    {
        foreach (var to in new SharedNodes(Walk.Fresh, Graph.Weak(from)))
        {
            foreach (var single in new SharedNodes(Graph.Weak(from), Graph.Weak(to)))
                Depths[single] = Math.Min(Depths[single], Walk.Level);
        }
    }
}
