using Companion.Engine.Proofs;

namespace Companion.Engine.Rules.Chains;

/// <summary>
/// A chain as a list of nodes, two for each strong link. Reading it, the first node of a link is false and the second true, all
/// the way: so one of the two ends is true.
/// </summary>
internal static class ChainPath
{
    /// <summary>Turns a chain round where its other end comes first on the board.</summary>
    internal static void Turn(ChainGraph graph, List<int> path)
    {
        if (graph.IsBefore(path[^1], path[0]))
            path.Reverse();
    }

    /// <summary>The cells of the nodes and of the almost locked sets that link them.</summary>
    internal static CellSet CellsOf(ChainGraph graph, List<int> path)
    {
        var cells = CellSet.Empty;
        for (var at = 0; at < path.Count; at += 2)
        {
            var (from, to) = (graph[path[at]], graph[path[at + 1]]);
            cells |= from.Cells | to.Cells;
            if (from.Digit != to.Digit)
                cells |= graph.SetOf(from, to).Cells;
        }

        return cells;
    }

    /// <summary>The deduction of a chain from end to end, or of a loop where its ends cannot both be true.</summary>
    internal static Deduction Deduce(RuleId rule, Board board, ChainGraph graph, List<int> path)
    {
        var (first, last) = (path[0], path[^1]);
        if (graph.Weak(first).Has(last))
            return DeduceLoop(rule, board, graph, path);
        var pattern = ChainPattern.Begin(board, graph);
        Enter(pattern, graph, path, graph[first].Cells | graph[last].Cells);
        return first == last && first < graph.Singles
            ? pattern.Deduce(rule, places: CandidateSet.Of(graph.CandidateOf(first)), removes: CandidateSet.Empty)
            : pattern.Deduce(rule, places: CandidateSet.Empty, removes: graph.SeenBy(first, last));
    }

    /// <summary>
    /// The deduction of a loop: by turns true and false all the way round, so that of the two ends of a weak link one is true.
    /// </summary>
    /// <param name="rule">The rule.</param>
    /// <param name="board">The board.</param>
    /// <param name="graph">The nodes.</param>
    /// <param name="path">The loop.</param>
    /// <param name="sets">The set of each strong link; the smallest there is where none are given.</param>
    internal static Deduction DeduceLoop(
        RuleId rule, Board board, ChainGraph graph, List<int> path, ReadOnlySpan<LockedSet> sets = default)
    {
        var pattern = ChainPattern.Begin(board, graph);
        Enter(pattern, graph, path, CellSet.Empty, sets);
        pattern.LinkWeakly(graph[path[^1]], graph[path[0]]);
        pattern.Lock();
        return pattern.Deduce(rule, places: CandidateSet.Empty, removes: RemovedByLoop(graph, path, sets));
    }

    /// <summary>
    /// What goes by a loop: whatever sees both ends of a weak link and, since of the two digits that link a set one is in it and
    /// leaves room for all the others, these from the cells that see all their places in the set.
    /// </summary>
    internal static CandidateSet RemovedByLoop(ChainGraph graph, List<int> path, ReadOnlySpan<LockedSet> sets = default)
    {
        var removes = graph.SeenBy(path[^1], path[0]);
        for (var at = 0; at < path.Count; at += 2)
        {
            if (at > 0)
                removes |= graph.SeenBy(path[at - 1], path[at]);
            var (from, to) = (graph[path[at]], graph[path[at + 1]]);
            if (from.Digit != to.Digit)
                removes |= graph.LockedOut(SetAt(at, graph, path, sets), DigitSet.Of(from.Digit, to.Digit));
        }

        return removes;
    }

    private static LockedSet SetAt(int at, ChainGraph graph, List<int> path, ReadOnlySpan<LockedSet> sets) =>
        sets.IsEmpty ? graph.SetOf(graph[path[at]], graph[path[at + 1]]) : sets[at / 2];

    // A cell with an end in it is an end, whichever of its candidates the way comes to first.
    private static void Enter(
        ChainPattern pattern, ChainGraph graph, List<int> path, CellSet ends, ReadOnlySpan<LockedSet> sets = default)
    {
        for (var at = 0; at < path.Count; at += 2)
        {
            var (from, to) = (graph[path[at]], graph[path[at + 1]]);
            if (at > 0)
                pattern.LinkWeakly(graph[path[at - 1]], from);
            pattern.LinkStrongly(from, to, from.Digit == to.Digit ? default : SetAt(at, graph, path, sets));
            foreach (var cell in from.Cells)
                pattern.Add(cell, ends.Contains(cell) ? Role.ChainEnd : Role.Chain);
            foreach (var cell in to.Cells)
                pattern.Add(cell, ends.Contains(cell) ? Role.ChainEnd : Role.Chain);
        }
    }
}
