using Companion.Engine.Proofs;

namespace Companion.Engine.Rules.Chains;

/// <summary>
/// A chain as a list of nodes, two for each strong link. Reading it, the first node of a link is false and the second true, all
/// the way: so one of the two ends is true.
/// </summary>
internal static class ChainPath
{
    /// <summary>The deduction of a chain from end to end, or of a loop where its ends cannot both be true.</summary>
    internal static Deduction Deduce(RuleId rule, Board board, ChainGraph graph, List<int> path)
    {
        var (first, last) = (path[0], path[^1]);
        if (graph.Weak(first).Has(last))
            return DeduceLoop(rule, board, graph, path);
        var pattern = new ChainPattern(board, graph);
        Enter(pattern, graph, path, graph[first].Cells | graph[last].Cells);
        return first == last && first < graph.Singles
            ? pattern.Deduce(rule, places: CandidateSet.Of(graph.CandidateOf(first)), removes: CandidateSet.Empty)
            : pattern.Deduce(rule, places: CandidateSet.Empty, removes: graph.SeenBy(first, last));
    }

    /// <summary>
    /// The deduction of a loop: by turns true and false all the way round, so that of the two ends of a weak link one is true.
    /// </summary>
    internal static Deduction DeduceLoop(RuleId rule, Board board, ChainGraph graph, List<int> path)
    {
        var pattern = new ChainPattern(board, graph);
        Enter(pattern, graph, path, CellSet.Empty);
        pattern.LinkWeakly(graph[path[^1]], graph[path[0]]);
        var removes = graph.SeenBy(path[^1], path[0]);
        for (var at = 2; at < path.Count; at += 2)
            removes |= graph.SeenBy(path[at - 1], path[at]);
        return pattern.Deduce(rule, places: CandidateSet.Empty, removes | pattern.LockedOut());
    }

    // A cell with an end in it is an end, whichever of its candidates the way comes to first.
    private static void Enter(ChainPattern pattern, ChainGraph graph, List<int> path, CellSet ends)
    {
        for (var at = 0; at < path.Count; at += 2)
        {
            var (from, to) = (graph[path[at]], graph[path[at + 1]]);
            if (at > 0)
                pattern.LinkWeakly(graph[path[at - 1]], from);
            pattern.LinkStrongly(from, to);
            foreach (var cell in from.Cells)
                pattern.Add(cell, ends.Contains(cell) ? Role.ChainEnd : Role.Chain);
            foreach (var cell in to.Cells)
                pattern.Add(cell, ends.Contains(cell) ? Role.ChainEnd : Role.Chain);
        }
    }
}
