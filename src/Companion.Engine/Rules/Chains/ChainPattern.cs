using Companion.Engine.Proofs;

namespace Companion.Engine.Rules.Chains;

/// <summary>
/// Gathers what chains name on a board, link by link, and makes a deduction of it. There is one for each thread, so that nothing is
/// allocated but the deductions.
/// </summary>
internal sealed class ChainPattern
{
    [ThreadStatic]
    private static ChainPattern? _ofThread;

    private readonly List<PatternCell> _cells = [];
    private readonly List<Link> _links = [];
    private readonly List<(LockedSet Set, DigitSet Linking)> _sets = [];
    private readonly List<CellSet> _cellsOfSets = [];
    private CellSet _known;
    private HouseSet _houses;
    private DigitSet _digits;
    private CandidateSet _restsOn;
    private Board _board = Board.Blank;
    private ChainGraph _graph = null!;

    private ChainPattern()
    {
    }

    /// <summary>The thread's pattern, with nothing in it.</summary>
    internal static ChainPattern Begin(Board board, ChainGraph graph)
    {
        var pattern = _ofThread ??= new();
        (pattern._board, pattern._graph) = (board, graph);
        pattern._cells.Clear();
        pattern._links.Clear();
        pattern._sets.Clear();
        pattern._cellsOfSets.Clear();
        (pattern._known, pattern._houses, pattern._digits, pattern._restsOn) = (default, default, default, default);
        return pattern;
    }

    /// <summary>Adds a cell; one added before keeps its role.</summary>
    internal void Add(Cell cell, Role role)
    {
        if (!_known.Contains(cell))
            _cells.Add(new(cell, role));
        _known = _known.With(cell);
    }

    /// <summary>Adds the candidates from which chains start, with what makes one of them true.</summary>
    internal void Start(Choice choice)
    {
        foreach (var cell in choice.Candidates.Cells)
            Add(cell, Role.Start);
        Name(choice);
    }

    /// <summary>
    /// Adds the candidates from which chains start, of two choices that cannot both be met by what they share with one thing that
    /// only one of them can have.
    /// </summary>
    internal void Start(Arm one, Arm other)
    {
        foreach (var arm in new[] { one, other })
        {
            foreach (var cell in arm.Starts.Cells)
                Add(cell, Role.Start);
            Name(arm.Choice);
        }

        foreach (var cell in one.Shared.Cells | other.Shared.Cells)
            Add(cell, Role.Chain);
        LinkWeakly(one.SharedNode, other.SharedNode);
    }

    // Adds what makes one of the candidates true.
    private void Name(Choice choice)
    {
        _digits |= choice.Candidates.Digits;
        if (choice.House is { } house)
        {
            _houses = _houses.With(house);
            _restsOn |= CandidateSet.Of(_board.Open & house.Cells, choice.Candidates.Digits) - choice.Candidates;
        }
        else
        {
            _restsOn |= CandidateSet.Of(choice.Candidates.Cells, ~choice.Candidates.Digits);
        }
    }

    /// <summary>Adds a chain from a true candidate.</summary>
    /// <param name="start">The candidate.</param>
    /// <param name="path">The nodes after it, false and true by turns.</param>
    /// <param name="goes">The candidate that the end of the chain takes out; null where the end is what is concluded.</param>
    internal void Branch(int start, List<int> path, int? goes)
    {
        var before = _graph[start];
        for (var at = 0; at < path.Count; at += 2)
        {
            var (from, to) = (_graph[path[at]], _graph[path[at + 1]]);
            LinkWeakly(before, from);
            LinkStrongly(from, to, from.Digit == to.Digit ? default : _graph.SetOf(from, to));
            foreach (var cell in from.Cells | to.Cells)
                Add(cell, Role.Chain);
            before = to;
        }

        if (goes is { } single)
            LinkWeakly(before, _graph[single]);
    }

    /// <summary>Adds a weak link.</summary>
    internal void LinkWeakly(Node from, Node to)
    {
        _digits = _digits.With(from.Digit).With(to.Digit);
        _links.Add(LinkBetween(from, to, isStrong: false));
    }

    /// <summary>Adds a strong link with all that it rests on: a cell, a house or an almost locked set.</summary>
    /// <param name="from">One end.</param>
    /// <param name="to">The other end.</param>
    /// <param name="set">The cell or set that links two digits.</param>
    internal void LinkStrongly(Node from, Node to, LockedSet set)
    {
        _links.Add(LinkBetween(from, to, isStrong: true));
        _digits = _digits.With(from.Digit).With(to.Digit);
        if (from.Digit == to.Digit)
            NameHouse(from, to);
        else if (set.Cells.Count > 1 || _graph.Kind == ChainKind.SetsOnly)
            NameSet(set, from, to);
        else
            _restsOn |= CandidateSet.Of(set.Cells, ~set.Digits);
    }

    /// <summary>Adds what a loop rests on beside its links: where else in a set the digits are not that it locks out.</summary>
    internal void Lock()
    {
        foreach (var (set, linking) in _sets)
        {
            foreach (var digit in _graph.LockedOut(set, linking).Digits)
                _restsOn |= CandidateSet.Of(set.Cells - _board[digit], digit);
        }
    }

    internal Deduction Deduce(RuleId rule, CandidateSet places, CandidateSet removes) => new()
    {
        Rule = rule,
        Cells = [.. _cells],
        Houses = _houses,
        Digits = _digits,
        Links = [.. _links],
        Sets = [.. _cellsOfSets],
        RestsOn = _restsOn,
        Places = places,
        Removes = removes,
    };

    private void NameHouse(Node from, Node to)
    {
        var places = from.Cells | to.Cells;
        if (HouseOf(places, from.Digit) is { } house)
            NameHouses(HouseSet.Of(house), places, from.Digit);
        else
            NameFish(AlmostFish.Between(from, to, _board));
    }

    private void NameFish(AlmostFish fish)
    {
        NameHouses(fish.Bases, fish.Cells, fish.Digit);
        foreach (var cell in fish.Cells)
            Add(cell, Role.Base);
    }

    private void NameHouses(HouseSet houses, CellSet places, Digit digit)
    {
        _houses |= houses;
        foreach (var house in houses)
            _restsOn |= CandidateSet.Of(_board.Open & house.Cells - places, digit);
    }

    // The block where there is a choice, which is taken in at a glance; two lines never share two cells.
    private House? HouseOf(CellSet places, Digit digit)
    {
        var found = default(House?);
        foreach (var house in places.CommonHouses)
        {
            if ((_board[digit] & house.Cells) == places)
                found = house;
        }

        return found;
    }

    // A set rests on what is absent from it, and its links on where else their digits are not in it.
    private void NameSet(LockedSet set, Node from, Node to)
    {
        var linking = DigitSet.Of(from.Digit, to.Digit);
        var known = _cellsOfSets.IndexOf(set.Cells);
        if (known >= 0)
        {
            _sets[known] = (set, _sets[known].Linking | linking);
        }
        else
        {
            _sets.Add((set, linking));
            _cellsOfSets.Add(set.Cells);
        }

        _digits |= set.Digits;
        _restsOn |= CandidateSet.Of(set.Cells, ~set.Digits)
            | CandidateSet.Of(set.Cells - from.Cells, from.Digit)
            | CandidateSet.Of(set.Cells - to.Cells, to.Digit);
        foreach (var cell in set.Cells)
            Add(cell, Role.Set);
    }

    private static Link LinkBetween(Node from, Node to, bool isStrong)
    {
        var (one, other) = Nearest(from.Cells, to.Cells);
        return new(new(one, from.Digit), new(other, to.Digit), isStrong)
        {
            FromGroup = from.Cells.Count > 1 ? from.Cells : CellSet.Empty,
            ToGroup = to.Cells.Count > 1 ? to.Cells : CellSet.Empty,
        };
    }

    private static (Cell One, Cell Other) Nearest(CellSet some, CellSet others)
    {
        var (nearest, best) = (int.MaxValue, default((Cell, Cell)));
        foreach (var one in some)
        {
            foreach (var other in others)
            {
                var (down, across) = (one.Row - other.Row, one.Column - other.Column);
                if (down * down + across * across is var distance && distance < nearest)
                    (nearest, best) = (distance, (one, other));
            }
        }

        return best;
    }
}
