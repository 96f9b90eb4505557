using Companion.Engine.Proofs;

namespace Companion.Engine.Rules.Chains;

/// <summary>Finds rings of two almost locked sets, linked by two digits of which each can be in one of the sets only.</summary>
internal sealed class SetRings
{
    [ThreadStatic]
    private static SetRings? _ofThread;

    private readonly SetLinks _links = new();
    private readonly List<(StrongLinkOfNodes One, StrongLinkOfNodes Other)> _rings = [];
    private readonly List<int> _path = [];
    private readonly LockedSet[] _sets = new LockedSet[2];

    private SetRings()
    {
    }

    /// <summary>Adds rings, those with the fewest cells first, as long as they remove something that those before do not.</summary>
    internal static void Find(RuleId rule, Board board, Findings found) => (_ofThread ??= new()).FindAll(rule, board, found);

    private void FindAll(RuleId rule, Board board, Findings found)
    {
        var graph = ChainFinder.For(board, ChainKind.SetsOnly).Graph;
        _links.Read(graph);
        _rings.Clear();
        foreach (var link in graph.Links)
        {
            AddWith(link, graph);
            AddWith(link with { One = link.Other, Other = link.One }, graph);
        }

        _rings.Sort(ByCells);
        var done = CandidateSet.Empty;
        foreach (var (one, other) in _rings)
        {
            _path.Clear();
            _path.AddRange([one.One, one.Other, other.One, other.Other]);
            (_sets[0], _sets[1]) = (one.Set, other.Set);
            var removes = ChainPath.RemovedByLoop(graph, _path, _sets);
            if (done.ContainsAll(removes))
                continue;
            done |= removes;
            if (!found.Add(ChainPath.DeduceLoop(rule, board, graph, _path, _sets)))
                return;
        }
    }

    // Rings of which the link's first node is the first, so that each comes once.
    private void AddWith(StrongLinkOfNodes link, ChainGraph graph)
    {
        var (first, second, cells) = (link.One, link.Other, link.Set.Cells);
        if (first > second || !graph.Step(second).Overlaps(graph.Weak(first)))
            return;
        foreach (var third in new SharedNodes(graph.Weak(second), graph.Weak(second)))
        {
            if (third < first)
                continue;
            foreach (var back in _links.From(third))
            {
                if (first < back.Other && graph.Weak(first).Has(back.Other) && (cells | back.Set.Cells).CommonHouses.IsEmpty)
                    _rings.Add((link, back));
            }
        }
    }

    private static int ByCells((StrongLinkOfNodes One, StrongLinkOfNodes Other) ring, (StrongLinkOfNodes One, StrongLinkOfNodes Other) next) =>
        Order(ring.One, ring.Other).CompareTo(Order(next.One, next.Other));

    private static (int, int, int, int, int) Order(StrongLinkOfNodes one, StrongLinkOfNodes other) =>
        (one.Cells + other.Cells, one.One, one.Other, other.One, other.Other);
}
