namespace Companion.Engine.Proofs;

/// <summary>Everything that a deduction names, and the search for ways to fill it.</summary>
internal sealed class NamedWorld
{
    // Far beyond any pattern of the ladder (tens of steps); a guard against deductions that name half the grid.
    private const int MostSteps = 50_000;

    private readonly DigitSet _digits;
    private readonly CandidateSet _restsOn;
    private readonly State _start;

    // The cells that a puzzle with one solution does not let exchange their digits; none where that is not assumed.
    private readonly CellSet _exchangeable;
    private readonly CandidateSet _standing;

    // The houses in which each named digit is still to be put, with the cells of the house.
    private readonly List<(Digit Digit, CellSet Cells)> _needs = [];
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

    // Branches on what has the fewest ways: a digit's places in a house, or a cell that can hold named digits only. Where
    // nothing of the kind is left, every other cell can take some digit that is not named.
    private bool Fill(State state)
    {
        if (++_steps > MostSteps)
            return true;
        var (fewest, digitToPut, cellToFill) = (int.MaxValue, default(Digit), default(Cell?));
        var places = CellSet.Empty;
        foreach (var (digit, house) in _needs)
        {
            var left = state.Named[digit] & house;
            if (left.Overlaps(state.Settled))
                continue;
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

        internal State WithoutOther(Cell cell) => this with { Other = Other.Without(cell) };
    }
}
