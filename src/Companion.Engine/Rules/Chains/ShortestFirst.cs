using Companion.Engine.Proofs;

namespace Companion.Engine.Rules.Chains;

/// <summary>
/// What finding chains and finding loops share: for each candidate the fewest strong links by which it goes, and the deductions in
/// this order.
/// </summary>
internal abstract class ShortestFirst
{
    /// <summary>More strong links than any chain has.</summary>
    internal const int Endless = int.MaxValue;

    // A candidate has an index below 1024.
    private const int IndexBits = 10;

    private readonly int[] _depths = new int[Candidate.Count];
    private readonly List<int> _wanted = [];

    /// <summary>The nodes of the board and their links.</summary>
    internal abstract ChainGraph Graph { get; }

    /// <summary>
    /// For each candidate that stands, in order: the fewest strong links by which it goes, or <see cref="Endless"/>.
    /// </summary>
    internal Span<int> Depths => _depths.AsSpan(0, Graph.Singles);

    /// <summary>The walk that is under way.</summary>
    protected ChainWalk Walk { get; } = new();

    /// <summary>The nodes of the chain traced last.</summary>
    protected List<int> Path { get; } = [];

    /// <summary>Adds deductions as the other overload does, for all candidates that take at least so many strong links.</summary>
    internal void Find(RuleId rule, Board board, int fewest, Findings found)
    {
        Span<int> limits = stackalloc int[Graph.Singles];
        limits.Fill(Endless);
        Find(rule, board, fewest, limits, found);
    }

    /// <summary>
    /// Adds deductions, the shortest first, then by the first candidate that goes, until every candidate that is wanted goes by the
    /// fewest strong links it can. A candidate whose shortest chains all come back to a node is left out: by the way back alone,
    /// which is a shorter chain, that node is true.
    /// </summary>
    /// <param name="rule">The rule.</param>
    /// <param name="board">The board.</param>
    /// <param name="fewest">A candidate is wanted where it takes at least so many strong links,</param>
    /// <param name="limits">and fewer than this, candidate by candidate.</param>
    /// <param name="found">Where they go.</param>
    internal void Find(RuleId rule, Board board, int fewest, ReadOnlySpan<int> limits, Findings found)
    {
        _wanted.Clear();
        for (var single = 0; single < Graph.Singles; single++)
        {
            if (_depths[single] >= fewest && _depths[single] < limits[single])
                _wanted.Add(_depths[single] << IndexBits | single);
        }

        _wanted.Sort();
        var done = CandidateSet.Empty;
        foreach (var wanted in _wanted)
        {
            var single = wanted & (1 << IndexBits) - 1;
            if (done.Contains(Graph.CandidateOf(single)))
                continue;
            if (!Trace(single) || IsSubset())
                continue;
            ChainPath.Turn(Graph, Path);
            var deduction = Deduce(rule, board);
            done |= deduction.Removes;
            foreach (var placed in deduction.Places)
                done |= Graph.SeenBy(Graph.NodeOf(placed), Graph.NodeOf(placed));
            if (!found.Add(deduction))
                return;
        }
    }

    // A pattern of nothing but sets within one house is a subset of it.
    private bool IsSubset()
    {
        if (!Graph.Kind.HasFlag(ChainKind.Sets) || ChainPath.CellsOf(Graph, Path).CommonHouses.IsEmpty)
            return false;
        for (var at = 0; at < Path.Count; at += 2)
        {
            if (Graph[Path[at]].Digit == Graph[Path[at + 1]].Digit)
                return false;
        }

        return true;
    }

    /// <summary>Puts the nodes of a shortest chain by which the candidate goes into <see cref="Path"/>.</summary>
    /// <returns>Whether there is one that does not come back to a node.</returns>
    protected abstract bool Trace(int single);

    /// <summary>The deduction of the chain in <see cref="Path"/>.</summary>
    protected abstract Deduction Deduce(RuleId rule, Board board);
}
