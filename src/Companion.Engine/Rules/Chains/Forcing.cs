using Companion.Engine.Proofs;

namespace Companion.Engine.Rules.Chains;

/// <summary>
/// Finds what follows from every candidate of a cell, or from every place of a digit in a house, by a chain from each: for each
/// candidate that no chain alone takes out, the choice with the fewest links in all. Kept for the thread's last board.
/// </summary>
internal sealed class Forcing : FewestLinksFirst
{
    [ThreadStatic]
    private static Forcing? _chainsOfThread;

    [ThreadStatic]
    private static Forcing? _blossomsOfThread;

    private readonly bool _isOfSets;
    private readonly Predicate<int> _isCell;
    private readonly Predicate<int> _isHouse;
    private readonly List<Choice> _choices = [];
    private readonly CandidateRows _rows = new();
    private ChainFinder _chains = null!;
    private Board? _board;

    private Forcing(bool isOfSets)
        : base(oneLink: isOfSets)
    {
        _isOfSets = isOfSets;
        (_isCell, _isHouse) = (choice => _choices[choice].House is null, choice => _choices[choice].House is not null);
    }

    /// <inheritdoc/>
    protected override ChainFinder Chains => _chains;

    /// <summary>Chains of any kind from cells and houses, where neither a chain alone nor a blossom does.</summary>
    internal static Forcing OfChains(Board board) =>
        (_chainsOfThread ??= new(isOfSets: false)).With(ChainFinder.For(board, ChainKind.WithSets), board);

    /// <summary>Almost locked sets, one from each candidate of a cell, where no chain of two or three sets does.</summary>
    internal static Forcing OfBlossoms(Board board) =>
        (_blossomsOfThread ??= new(isOfSets: true)).With(ChainFinder.For(board, ChainKind.SetsOnly), board);

    /// <summary>Adds what follows from cells, or from houses.</summary>
    internal void Find(RuleId rule, Board board, bool fromHouses, Findings found) =>
        Find(rule, board, fromHouses ? _isHouse : _isCell, found);

    /// <inheritdoc/>
    protected override CandidateSet Begin(ChainPattern pattern, int start)
    {
        pattern.Start(_choices[start]);
        return _choices[start].Candidates;
    }

    private Forcing With(ChainFinder chains, Board board)
    {
        _chains = chains;
        if (!ReferenceEquals(_board, board))
            Read(board);
        return this;
    }

    private void Read(Board board)
    {
        _board = board;
        _choices.Clear();
        Conclusions.Clear();
        Choice.FindAll(board, houses: !_isOfSets, fewest: 3, _choices);
        _rows.Begin(Graph.Numbers);
        foreach (var choice in _choices)
            _rows.Add(choice.Candidates);
        var easier = _isOfSets ? CandidateSet.Empty : OfBlossoms(board).Goes;
        for (var single = 0; single < Graph.Singles; single++)
        {
            if (_chains.Depths[single] != ShortestFirst.Endless || easier.Contains(Graph.CandidateOf(single)))
                continue;
            Suppose(single, holds: true);
            if (!_isOfSets && WouldTakeOut(single))
                Suppose(single, holds: false);
        }

        Conclusions.Sort();
    }

    private CandidateSet Goes
    {
        get
        {
            var goes = CandidateSet.Empty;
            foreach (var conclusion in Conclusions)
                goes |= GoesBy(conclusion);
            return goes;
        }
    }

    // Whether anything would go, if this were placed, that does not go by a chain alone.
    private bool WouldTakeOut(int single)
    {
        foreach (var other in new SharedNodes(Graph.Excluded(single), Graph.Excluded(single)))
        {
            if (other < Graph.Singles && _chains.Depths[other] == ShortestFirst.Endless)
                return true;
        }

        return false;
    }

    private void Suppose(int single, bool holds)
    {
        Supposition.Follow(Chains, single, holds);
        if (Supposition.RefutesItself)
            return;
        var best = new Conclusion(int.MaxValue, single, !holds, -1);
        for (var choice = 0; choice < _choices.Count; choice++)
        {
            if (!_rows.IsWithin(choice, Supposition.False))
                continue;
            if (best.Start < 0)
                Supposition.CountLinks();
            if (Supposition.LinksTo(_choices[choice].Candidates) is var links && links < best.Links)
                best = best with { Links = links, Start = choice };
        }

        // One link from each candidate: the choice lies in two houses, which is pointing or claiming.
        if (best.Start >= 0 && best.Links > _choices[best.Start].Candidates.Count)
            Conclusions.Add(best);
    }
}
