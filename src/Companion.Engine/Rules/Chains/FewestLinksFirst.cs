using Companion.Engine.Proofs;

namespace Companion.Engine.Rules.Chains;

/// <summary>
/// What finding conclusions from several candidates, of which one must be true, shares: the conclusions with a chain to each, and the
/// deductions with the fewest links first.
/// </summary>
/// <param name="oneLink">Whether chains have one strong link at most.</param>
internal abstract class FewestLinksFirst(bool oneLink)
{
    private readonly List<int> _path = [];

    /// <summary>What follows from all candidates with which some chains start.</summary>
    /// <param name="Links">The links of all the chains together.</param>
    /// <param name="Single">The candidate.</param>
    /// <param name="Places">Whether it is placed, having been supposed to be false; else it goes.</param>
    /// <param name="Start">The number of what the chains start with.</param>
    protected readonly record struct Conclusion(int Links, int Single, bool Places, int Start) : IComparable<Conclusion>
    {
        /// <summary>The fewest links first, then by the candidate.</summary>
        public int CompareTo(Conclusion other) => (Links, Single, Places).CompareTo((other.Links, other.Single, other.Places));
    }

    /// <summary>The chains of the board.</summary>
    protected abstract ChainFinder Chains { get; }

    /// <summary>The nodes of the board and their links.</summary>
    protected ChainGraph Graph => Chains.Graph;

    /// <summary>What is supposed now.</summary>
    protected Supposition Supposition { get; } = new(oneLink);

    /// <summary>The conclusions of the board, sorted.</summary>
    protected List<Conclusion> Conclusions { get; } = [];

    /// <summary>
    /// Adds what follows, the fewest links first, then by the candidate. All that the ends of the chains exclude goes at once.
    /// </summary>
    /// <param name="rule">The rule.</param>
    /// <param name="board">The board.</param>
    /// <param name="isWanted">Whether a conclusion from this start is.</param>
    /// <param name="found">Where they go.</param>
    protected void Find(RuleId rule, Board board, Predicate<int> isWanted, Findings found)
    {
        var done = CandidateSet.Empty;
        foreach (var conclusion in Conclusions)
        {
            if (!isWanted(conclusion.Start) || done.ContainsAll(GoesBy(conclusion)))
                continue;
            var deduction = Deduce(rule, board, conclusion);
            done |= deduction.Removes | GoesBy(conclusion);
            if (!found.Add(deduction))
                return;
        }
    }

    /// <summary>What goes by a conclusion.</summary>
    protected CandidateSet GoesBy(Conclusion conclusion) => conclusion.Places
        ? Graph.SeenBy(conclusion.Single, conclusion.Single)
        : CandidateSet.Of(Graph.CandidateOf(conclusion.Single));

    /// <summary>Adds to a pattern what some chains start with.</summary>
    /// <returns>The candidates, of which one must be true.</returns>
    protected abstract CandidateSet Begin(ChainPattern pattern, int start);

    private Deduction Deduce(RuleId rule, Board board, Conclusion conclusion)
    {
        var pattern = ChainPattern.Begin(board, Graph);
        var starts = Begin(pattern, conclusion.Start);
        Supposition.Follow(Chains, conclusion.Single, !conclusion.Places);
        Supposition.CountLinks();
        var goes = CandidateSet.Of(board.Open, DigitSet.All);
        foreach (var candidate in starts)
        {
            var start = Graph.NodeOf(candidate);
            Supposition.Trace(start, _path);
            pattern.Branch(start, _path, conclusion.Places ? null : conclusion.Single);
            var end = _path.Count > 0 ? _path[^1] : start;
            goes &= Graph.SeenBy(end, end);
        }

        var concluded = CandidateSet.Of(Graph.CandidateOf(conclusion.Single));
        return conclusion.Places
            ? pattern.Deduce(rule, places: concluded, removes: CandidateSet.Empty)
            : pattern.Deduce(rule, places: CandidateSet.Empty, removes: goes | concluded);
    }
}
