using Companion.Engine.Proofs;

namespace Companion.Engine.Rules.Chains;

/// <summary>
/// Finds chains of one kind: for each candidate a shortest one by which it goes. Kept for the thread's last board, since several
/// rules ask about the same one.
/// </summary>
internal sealed class ChainFinder : ShortestFirst
{
    /// <summary>The most sets of a chain of sets alone: longer ones are chains of any kind.</summary>
    internal const int MostSets = 3;

    [ThreadStatic]
    private static ChainFinder?[]? _ofThread;

    private readonly int _most;
    private Board? _board;

    private ChainFinder(ChainKind kind)
    {
        Graph = new(kind);
        _most = kind == ChainKind.SetsOnly ? MostSets : Endless;
    }

    /// <inheritdoc/>
    internal override ChainGraph Graph { get; }

    /// <summary>What is reached from each node of the graph; not of a chain of sets alone.</summary>
    internal ReachedNodes Reached { get; } = new();

    /// <summary>The finder of this kind, with the board read.</summary>
    internal static ChainFinder For(Board board, ChainKind kind)
    {
        _ofThread ??= new ChainFinder?[1 << 5];
        var finder = _ofThread[(int)kind] ??= new(kind);
        if (!ReferenceEquals(finder._board, board))
            finder.Read(board);
        return finder;
    }

    /// <inheritdoc/>
    protected override bool Trace(int single)
    {
        Reach(single);
        return Walk.Trace(Graph.Excluded(single), Graph.Excluded(single), Path);
    }

    /// <inheritdoc/>
    protected override Deduction Deduce(RuleId rule, Board board) => ChainPath.Deduce(rule, board, Graph, Path);

    private void Read(Board board)
    {
        _board = board;
        Graph.Read(board);
        if (_most == Endless)
            Reached.Read(Graph);
        for (var single = 0; single < Graph.Singles; single++)
            Depths[single] = IsReached(single) && Reach(single) ? Walk.Level : Endless;
    }

    // Whether a candidate turns out to be false, however long the chain.
    private bool IsReached(int single)
    {
        if (_most != Endless)
            return true;
        foreach (var node in new SharedNodes(Graph.Excluded(single), Graph.Linked))
        {
            foreach (var first in new SharedNodes(Graph.Strong(node), Graph.Strong(node)))
            {
                if (Reached.From(first).Overlaps(Graph.Excluded(single)))
                    return true;
            }
        }

        return false;
    }

    // Walks from a candidate to where it turns out to be false, or to the end.
    private bool Reach(int single)
    {
        Span<ulong> first = stackalloc ulong[Graph.Words];
        foreach (var node in new SharedNodes(Graph.Excluded(single), Graph.Linked))
            first.Add(Graph.Strong(node));
        for (Walk.Begin(Graph, first); !Walk.IsOver && Walk.Level <= _most; Walk.Advance())
        {
            if (Walk.Fresh.Overlaps(Graph.Excluded(single)))
                return true;
        }

        return false;
    }
}
