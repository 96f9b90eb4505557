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
        _ofThread ??= new ChainFinder?[1 << 6];
        var finder = _ofThread[(int)kind] ??= new(kind);
        if (!ReferenceEquals(finder._board, board))
            finder.Read(board);
        return finder;
    }

    /// <inheritdoc/>
    protected override bool Trace(int single)
    {
        Walk.Begin(Graph, Graph.Follows(single));
        while (Walk.Level < Depths[single])
            Walk.Advance();
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
            Depths[single] = Measure(single);
    }

    // The fewest strong links of a chain by which a candidate goes. A chain reads the same from either end, so that the walk goes
    // half the way: from its last level one weak link leads to that level or to the next one, which other halves have come to.
    private int Measure(int single)
    {
        Span<ulong> weak = stackalloc ulong[Graph.Words];
        if (_most == Endless)
        {
            Reached.From(Graph.Follows(single), weak);
            if (!Graph.Excluded(single).Overlaps(weak))
                return Endless;
        }

        Graph.Excluded(single).CopyTo(weak);
        Walk.Begin(Graph, Graph.Follows(single));
        for (var links = 1; !Walk.IsOver; links += 2)
        {
            if (Walk.Fresh.Overlaps(weak))
                return links;
            if (links >= _most)
                break;
            weak.Clear();
            foreach (var node in Walk.At(Walk.Level))
                weak.Add(Graph.Weak(node));
            if (Walk.Fresh.Overlaps(weak))
                return links + 1;
            Walk.Advance();
        }

        return Endless;
    }
}
