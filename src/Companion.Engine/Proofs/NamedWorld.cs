namespace Companion.Engine.Proofs;

/// <summary>Everything that a deduction names, and the search for ways to fill it.</summary>
internal sealed class NamedWorld
{
    // Far beyond any pattern of the ladder (tens of steps); a guard against deductions that name half the grid.
    private const int MostSteps = 50_000;

    private readonly DigitSet _digits;
    private readonly CandidateSet _restsOn;
    private readonly State _start;

    // The almost locked sets that the deduction names: cells of one house, which hold as many digits as they are.
    private readonly CellSet[] _sets;

    // The cells that a puzzle with one solution does not let exchange their digits; none where that is not assumed.
    private readonly CellSet _exchangeable;
    private readonly CandidateSet _standing;

    // The houses in which each named digit is still to be put, with the cells of the house.
    private readonly List<(Digit Digit, CellSet Cells)> _needs = [];

    // The digits that must stand in one of some cells, as the filling under way has it; read before it goes on.
    private readonly List<(Digit Digit, CellSet Places)> _demands = [];
    private int _steps;

    /// <summary>What a deduction names.</summary>
    /// <param name="board">The board.</param>
    /// <param name="deduction">The deduction.</param>
    /// <param name="exchangeable">
    /// Cells that must not be filled so that their digits could be exchanged within their houses; none by default.
    /// </param>
    internal NamedWorld(Board board, Deduction deduction, CellSet exchangeable = default)
    {
        (_exchangeable, _standing) = (exchangeable, board.Candidates);
        _digits = deduction.Digits;
        _restsOn = deduction.RestsOn;
        _sets = [.. deduction.Sets.Where(set => !set.CommonHouses.IsEmpty)];
        var cells = deduction.PatternCells | (deduction.Places | deduction.Removes).Cells;
        foreach (var house in deduction.Houses)
            cells |= house.Cells & board.Open;
        var named = CandidateSet.Of(cells, _digits) - _restsOn;
        foreach (var house in deduction.Houses)
        {
            var missing = board.MissingFrom(house);
            foreach (var digit in _digits)
            {
                if (missing.Contains(digit))
                    _needs.Add((digit, house.Cells));
                else
                    named = named.WithPlane(digit, named[digit] - house.Cells);
            }
        }

        var other = CellSet.Empty;
        foreach (var cell in cells)
        {
            if (!(~_digits - _restsOn[cell]).IsEmpty)
                other = other.With(cell);
        }

        _start = new(cells, named, other);
    }

    /// <summary>Whether the named cells can be filled with this candidate true; null where the search was given up.</summary>
    internal bool? CanBeWith(Candidate candidate) => _digits.Contains(candidate.Digit)
        ? CanBeFilled(_start.With(candidate))
        : CanBeFilled(_start.WithOther(candidate.Cell));

    /// <summary>Whether the named cells can be filled with this candidate false; null where the search was given up.</summary>
    internal bool? CanBeWithout(Candidate candidate)
    {
        var (cell, digit) = candidate;
        if (_digits.Contains(digit))
            return CanBeFilled(_start.Without(candidate));

        // Some digit that is not named, and not this one either.
        var others = ~_digits - _restsOn[cell];
        return CanBeFilled(others.Without(digit).IsEmpty ? _start.WithoutOther(cell) : _start);
    }

    private bool? CanBeFilled(State state)
    {
        _steps = 0;
        var found = Fill(state);
        return _steps > MostSteps ? null : found;
    }

    // Branches on what has the fewest ways: a digit of which it is known that it stands in one of some cells, or a cell that can
    // hold named digits only. Where nothing of the kind is left, every other cell can take some digit that is not named.
    private bool Fill(State state)
    {
        if (++_steps > MostSteps)
            return true;
        if (!TryDemand(state))
            return false;
        var (fewest, digitToPut, cellToFill) = (int.MaxValue, default(Digit), default(Cell?));
        var places = CellSet.Empty;
        foreach (var (digit, left) in _demands)
        {
            if (state.TryExclude(digit, left, out var narrower))
                return Fill(narrower);
            if (left.Count < fewest)
                (fewest, digitToPut, places) = (left.Count, digit, left);
        }

        foreach (var cell in state.Tight)
        {
            var ways = state.Named[cell].Count;
            if (ways < fewest)
                (fewest, cellToFill) = (ways, cell);
        }

        if (fewest == int.MaxValue)
            return _exchangeable.IsEmpty || !CanExchange(state);
        return cellToFill is { } chosen ? FillCell(state, chosen) : PutDigit(state, digitToPut, places);
    }

    // Collects what must stand somewhere: the digits that houses still need, and all digits of a set that has as many left as
    // cells. A set that has fewer, in cells of one house, cannot be filled. That follows from the candidates alone, whatever the
    // deduction says of its sets: they only tell where to look.
    private bool TryDemand(State state)
    {
        _demands.Clear();
        foreach (var (digit, house) in _needs)
        {
            var left = state.Named[digit] & house;
            if (!left.Overlaps(state.Settled))
                _demands.Add((digit, left));
        }

        foreach (var set in _sets)
        {
            var open = set - state.Settled;
            if (!state.Tight.ContainsAll(open))
                continue;
            var digits = state.Named.In(open).Digits;
            if (digits.Count < open.Count)
                return false;
            foreach (var digit in digits.Count == open.Count ? digits : DigitSet.Empty)
                _demands.Add((digit, state.Named[digit] & open));
        }

        return true;
    }

    private bool CanExchange(State state)
    {
        var filling = state.Named.In(_exchangeable);
        return state.Settled.ContainsAll(_exchangeable) && filling.Count == _exchangeable.Count
            && Exchange.Exists(filling, _standing);
    }

    private bool FillCell(State state, Cell cell)
    {
        foreach (var digit in state.Named[cell])
        {
            if (Fill(state.With(new(cell, digit))))
                return true;
        }

        return false;
    }

    private bool PutDigit(State state, Digit digit, CellSet places)
    {
        foreach (var cell in places)
        {
            if (Fill(state.With(new(cell, digit))))
                return true;
            state = state.Without(new(cell, digit));
        }

        return false;
    }

    /// <summary>How far the filling is.</summary>
    /// <param name="Cells">The named cells.</param>
    /// <param name="Named">The named digits that each cell can still hold; a settled cell has one or none.</param>
    /// <param name="Other">The cells that can hold a digit that is not named.</param>
    /// <param name="Settled">The cells whose digit is chosen.</param>
    private readonly record struct State(CellSet Cells, CandidateSet Named, CellSet Other, CellSet Settled = default)
    {
        /// <summary>The cells that are to be filled with a named digit.</summary>
        internal CellSet Tight => Cells - Other - Settled;

        internal State With(Candidate candidate)
        {
            var (cell, digit) = candidate;
            var emptied = Named.In(~CellSet.Of(cell));
            var other = Other.Without(cell);
            if (!Named.Contains(candidate))
                return new(Cells, emptied, other, Settled); // Nothing is left for the cell: a dead end.
            return new(Cells, emptied.WithPlane(digit, Named[digit] - cell.Peers), other, Settled.With(cell));
        }

        internal State WithOther(Cell cell) =>
            this with { Named = Named.In(~CellSet.Of(cell)), Settled = Other.Contains(cell) ? Settled.With(cell) : Settled };

        internal State Without(Candidate candidate) => this with { Named = Named.Without(candidate) };

        /// <summary>
        /// Takes a digit that must be in one of these cells from the cells that see all of them. Saves trying the cells one by one.
        /// </summary>
        /// <returns>Whether there was any.</returns>
        internal bool TryExclude(Digit digit, CellSet places, out State narrower)
        {
            var seeing = places.IsEmpty ? CellSet.Empty : Named[digit] & places.CommonPeers;
            narrower = seeing.IsEmpty ? this : this with { Named = Named.WithPlane(digit, Named[digit] - seeing) };
            return !seeing.IsEmpty;
        }

        internal State WithoutOther(Cell cell) => this with { Other = Other.Without(cell) };
    }
}
