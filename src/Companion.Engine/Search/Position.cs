using System.Runtime.CompilerServices;
using System.Runtime.Intrinsics;

namespace Companion.Engine.Search;

/// <summary>
/// The candidates at one point of the search: a plane for each digit, in which a filled cell keeps its digit as its only
/// candidate. A value of 144 bytes that is copied where the search branches, so nothing is ever undone and nothing allocated.
/// </summary>
internal struct Position
{
    private Planes _planes;

    [InlineArray(Digit.Count)]
    private struct Planes
    {
        private Vector128<uint> _first;
    }

    /// <summary>The position in which the board's digits and candidates stand.</summary>
    internal static Position Of(Board board)
    {
        var position = default(Position);
        foreach (var cell in board.Filled)
            position._planes[board.DigitAt(cell)!.Value.Index] |= Plane.Of(cell.Index);
        foreach (var digit in Digit.All)
            position._planes[digit.Index] |= Plane.Of(board[digit]);
        return position;
    }

    /// <summary>The position with these givens, 81 characters, in which all but 1 to 9 is an empty cell.</summary>
    internal static Position Of(ReadOnlySpan<char> givens)
    {
        var position = default(Position);
        var filled = Vector128<uint>.Zero;
        for (var cell = 0; cell < Cell.Count; cell++)
        {
            var digit = givens[cell] - '1';
            if ((uint)digit >= Digit.Count)
                continue;
            position._planes[digit] |= Plane.Of(cell);
            filled |= Plane.Of(cell);
        }

        for (var digit = 0; digit < Digit.Count; digit++)
        {
            var givenPlaces = position._planes[digit];
            position._planes[digit] = givenPlaces | Plane.All & ~filled & ~Plane.Seen(givenPlaces);
        }

        return position;
    }

    /// <summary>
    /// Takes out candidates until nothing more follows from singles, hidden or naked, and from where a line and a block meet.
    /// </summary>
    /// <param name="counts">How many candidates the cells have left.</param>
    /// <returns>Whether the position may have a solution. If it may and no cell is open, it is one.</returns>
    internal bool Narrow(out CellCounts counts)
    {
        Position before;
        do
        {
            before = this;
            counts = default;
            if (!ConfineDigits(out var known))
                return false;
            foreach (var places in _planes)
                counts.Add(places);
            if (counts.HasDead)
                return false;
            ClearBeside(counts.Single & ~known);
        }
        while (DiffersFrom(before));
        return true;
    }

    // Confines each digit, and keeps a cell whose digit is known from all others: from the next at once, from those before it at
    // the end.
    private bool ConfineDigits(out Vector128<uint> known)
    {
        var lone = default(Planes);
        known = Vector128<uint>.Zero;
        for (var digit = 0; digit < Digit.Count; digit++)
        {
            var places = Plane.Confine(_planes[digit] & ~known);
            if (places == Vector128<uint>.Zero)
                return false;
            _planes[digit] = places;
            lone[digit] = Plane.Lone(places);
            known |= lone[digit];
        }

        for (var digit = 0; digit < Digit.Count; digit++)
            _planes[digit] = _planes[digit] & ~known | lone[digit];
        return true;
    }

    // Each of these cells has one candidate left, which goes from all that the cell sees.
    private void ClearBeside(Vector128<uint> singles)
    {
        if (singles == Vector128<uint>.Zero)
            return;
        for (var digit = 0; digit < Digit.Count; digit++)
            _planes[digit] &= ~Plane.Seen(_planes[digit] & singles);
    }

    private readonly bool DiffersFrom(in Position other)
    {
        var difference = Vector128<uint>.Zero;
        for (var digit = 0; digit < Digit.Count; digit++)
            difference |= _planes[digit] ^ other._planes[digit];
        return difference != Vector128<uint>.Zero;
    }

    /// <summary>A candidate of a cell with few, to try.</summary>
    internal readonly Candidate Choose(in CellCounts counts)
    {
        var cell = Plane.First(counts.Fewest);
        var place = Plane.Of(cell);
        var digit = 0;
        while ((_planes[digit] & place) == Vector128<uint>.Zero)
            digit++;
        return new(Cell.Unchecked(cell), Digit.At(digit));
    }

    /// <summary>Supposes that the candidate is true.</summary>
    internal void Take(Candidate candidate)
    {
        var place = Plane.Of(candidate.Cell.Index);
        var places = _planes[candidate.Digit.Index] & ~Plane.Seen(place);
        for (var digit = 0; digit < Digit.Count; digit++)
            _planes[digit] &= ~place;
        _planes[candidate.Digit.Index] = places;
    }

    /// <summary>Supposes that the candidate is false.</summary>
    internal void Strike(Candidate candidate) => _planes[candidate.Digit.Index] &= ~Plane.Of(candidate.Cell.Index);

    /// <summary>The full grid, where every cell has one candidate.</summary>
    internal readonly Solution ToSolution()
    {
        var text = new char[Cell.Count];
        for (var digit = 0; digit < Digit.Count; digit++)
        {
            for (var rest = _planes[digit]; rest != Vector128<uint>.Zero;)
            {
                var cell = Plane.First(rest);
                text[cell] = (char)('1' + digit);
                rest &= ~Plane.Of(cell);
            }
        }

        return new(new string(text));
    }
}
