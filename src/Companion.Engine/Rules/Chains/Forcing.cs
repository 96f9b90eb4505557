using Companion.Engine.Proofs;

namespace Companion.Engine.Rules.Chains;

/// <summary>
/// Finds what follows from every candidate of a cell, or from every place of a digit in a house, by a chain from each: for each
/// candidate that no chain alone takes out, the choice with the fewest links in all. Kept for the thread's last board.
/// </summary>
internal sealed class Forcing
{
    [ThreadStatic]
    private static Forcing? _chainsOfThread;

    [ThreadStatic]
    private static Forcing? _blossomsOfThread;

    private readonly bool _isOfSets;
    private readonly Supposition _supposition;
    private readonly List<Choice> _choices = [];
    private readonly List<Conclusion> _conclusions = [];
    private readonly List<int> _path = [];
    private readonly List<int> _firsts = []; // Of each choice: most are told apart by it.
    private ulong[] _masks = [];
    private int _words;
    private ChainFinder _chains = null!;
    private Board? _board;

    private Forcing(bool isOfSets)
    {
        _isOfSets = isOfSets;
        _supposition = new(oneLink: isOfSets);
    }

    // The candidate is placed where it was supposed to be false, else it goes. Links: of all the chains together.
    private readonly record struct Conclusion(int Links, int Single, bool Places, int Choice) : IComparable<Conclusion>
    {
        public int CompareTo(Conclusion other) => (Links, Single, Places).CompareTo((other.Links, other.Single, other.Places));
    }

    private ChainGraph Graph => _chains.Graph;

    /// <summary>Chains of any kind from cells and houses, where neither a chain alone nor a blossom does.</summary>
    internal static Forcing Chains(Board board) =>
        (_chainsOfThread ??= new(isOfSets: false)).With(ChainFinder.For(board, ChainKind.WithSets), board);

    /// <summary>Almost locked sets, one from each candidate of a cell, where no chain of two or three sets does.</summary>
    internal static Forcing Blossoms(Board board) =>
        (_blossomsOfThread ??= new(isOfSets: true)).With(ChainFinder.For(board, ChainKind.SetsOnly), board);

    /// <summary>
    /// Adds what follows from cells, or from houses, the fewest links first, then by the candidate. All that the ends of the chains
    /// exclude goes at once.
    /// </summary>
    internal void Find(RuleId rule, Board board, bool fromHouses, Findings found)
    {
        var done = CandidateSet.Empty;
        foreach (var conclusion in _conclusions)
        {
            if (_choices[conclusion.Choice].House.HasValue != fromHouses || done.ContainsAll(GoesBy(conclusion)))
                continue;
            var deduction = Deduce(rule, board, conclusion);
            done |= deduction.Removes | GoesBy(conclusion);
            if (!found.Add(deduction))
                return;
        }
    }

    private CandidateSet GoesBy(Conclusion conclusion) => conclusion.Places
        ? Graph.SeenBy(conclusion.Single, conclusion.Single)
        : CandidateSet.Of(Graph.CandidateOf(conclusion.Single));

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
        _conclusions.Clear();
        Choice.FindAll(board, houses: !_isOfSets, _choices);
        MakeMasks();
        var easier = _isOfSets ? CandidateSet.Empty : Blossoms(board).Goes;
        for (var single = 0; single < Graph.Singles; single++)
        {
            if (_chains.Depths[single] != ShortestFirst.Endless || easier.Contains(Graph.CandidateOf(single)))
                continue;
            Suppose(single, holds: true);
            if (!_isOfSets && WouldTakeOut(single))
                Suppose(single, holds: false);
        }

        _conclusions.Sort();
    }

    private CandidateSet Goes
    {
        get
        {
            var goes = CandidateSet.Empty;
            foreach (var conclusion in _conclusions)
                goes |= GoesBy(conclusion);
            return goes;
        }
    }

    // The candidates of each choice; they come first among the nodes.
    private void MakeMasks()
    {
        _words = NodeBits.WordsFor(Graph.Singles);
        if (_masks.Length < _choices.Count * _words)
            _masks = new ulong[_choices.Count * _words * 5 / 4];
        _masks.AsSpan(0, _choices.Count * _words).Clear();
        _firsts.Clear();
        for (var choice = 0; choice < _choices.Count; choice++)
        {
            foreach (var candidate in _choices[choice].Candidates)
            {
                var node = Graph.NodeOf(candidate);
                if (_firsts.Count == choice)
                    _firsts.Add(node);
                _masks.AsSpan(choice * _words, _words).Set(node);
            }
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
        _supposition.Follow(_chains, single, holds);
        if (_supposition.RefutesItself)
            return;
        var best = new Conclusion(int.MaxValue, single, !holds, -1);
        for (var choice = 0; choice < _choices.Count; choice++)
        {
            if (!IsAllFalse(choice))
                continue;
            if (best.Choice < 0)
                _supposition.CountLinks();
            if (LinksTo(choice) is var links && links < best.Links)
                best = best with { Links = links, Choice = choice };
        }

        // One link from each candidate: the choice lies in two houses, which is pointing or claiming.
        if (best.Choice >= 0 && best.Links > _choices[best.Choice].Candidates.Count)
            _conclusions.Add(best);
    }

    private bool IsAllFalse(int choice) => _supposition.False.Has(_firsts[choice])
        && ((ReadOnlySpan<ulong>)_masks.AsSpan(choice * _words, _words)).IsWithin(_supposition.False);

    private int LinksTo(int choice)
    {
        var links = 0;
        foreach (var candidate in _choices[choice].Candidates)
            links += _supposition.LinksTo(Graph.NodeOf(candidate));
        return links;
    }

    private Deduction Deduce(RuleId rule, Board board, Conclusion conclusion)
    {
        var pattern = ChainPattern.Begin(board, Graph);
        pattern.Start(_choices[conclusion.Choice]);
        _supposition.Follow(_chains, conclusion.Single, !conclusion.Places);
        _supposition.CountLinks();
        var goes = CandidateSet.Of(board.Open, DigitSet.All);
        foreach (var candidate in _choices[conclusion.Choice].Candidates)
        {
            var start = Graph.NodeOf(candidate);
            _supposition.Trace(start, _path);
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
