using System.Collections;
using System.Numerics;
using System.Runtime.Intrinsics.X86;
using System.Text;

namespace Companion.Engine;

/// <summary>
/// A set of cells. The default value is the empty set. Written as a grid of nine lines, <c>x</c> in and <c>.</c> out.
/// </summary>
public readonly record struct CellSet : IReadOnlyCollection<Cell>
{
    // Bands one and two (54 cells) lie in _upper, band three (27 cells) in _lower, so that no row straddles the two words.
    private const int Split = 54;
    private const ulong UpperAll = (1ul << Split) - 1;
    private const ulong LowerAll = (1ul << (Cell.Count - Split)) - 1;

    private readonly ulong _upper;
    private readonly ulong _lower;

    private CellSet(ulong upper, ulong lower) => (_upper, _lower) = (upper, lower);

    /// <summary>No cell.</summary>
    public static CellSet Empty => default;

    /// <summary>All 81 cells.</summary>
    public static CellSet All => new(UpperAll, LowerAll);

    /// <summary>How many cells it holds, 0 to 81.</summary>
    public int Count => BitOperations.PopCount(_upper) + BitOperations.PopCount(_lower);

    /// <summary>Whether it holds no cell.</summary>
    public bool IsEmpty => (_upper | _lower) == 0;

    /// <summary>The first cell in reading order.</summary>
    /// <exception cref="InvalidOperationException">The set is empty.</exception>
    public Cell First => IsEmpty
        ? throw new InvalidOperationException("An empty cell set has no first cell.")
        : Cell.Unchecked(_upper != 0 ? BitOperations.TrailingZeroCount(_upper) : Split + BitOperations.TrailingZeroCount(_lower));

    /// <summary>The houses that hold all cells of the set; all 27 for the empty set.</summary>
    public HouseSet CommonHouses
    {
        get
        {
            var houses = HouseSet.All;
            foreach (var cell in this)
                houses &= cell.Houses;
            return houses;
        }
    }

    /// <summary>The cells that see every cell of the set; all cells for the empty set.</summary>
    public CellSet CommonPeers
    {
        get
        {
            var peers = All;
            foreach (var cell in this)
                peers &= cell.Peers;
            return peers;
        }
    }

    /// <summary>The set of these cells.</summary>
    public static CellSet Of(params ReadOnlySpan<Cell> cells)
    {
        var set = Empty;
        foreach (var cell in cells)
            set = set.With(cell);
        return set;
    }

    /// <summary>Whether the cell is in the set.</summary>
    public bool Contains(Cell cell) => cell.Index < Split
        ? (_upper >> cell.Index & 1) != 0
        : (_lower >> (cell.Index - Split) & 1) != 0;

    /// <summary>Whether all of the other set's cells are in this one.</summary>
    public bool ContainsAll(CellSet other) => (other - this).IsEmpty;

    /// <summary>Whether the two sets share a cell.</summary>
    public bool Overlaps(CellSet other) => (_upper & other._upper | _lower & other._lower) != 0;

    /// <summary>The set with the cell added.</summary>
    public CellSet With(Cell cell) => this | One(cell);

    /// <summary>The set with the cell taken out.</summary>
    public CellSet Without(Cell cell) => this - One(cell);

    /// <summary>The cells in either set.</summary>
    public static CellSet operator |(CellSet left, CellSet right) => new(left._upper | right._upper, left._lower | right._lower);

    /// <summary>The cells in both sets.</summary>
    public static CellSet operator &(CellSet left, CellSet right) => new(left._upper & right._upper, left._lower & right._lower);

    /// <summary>The cells of the first set that are not in the second.</summary>
    public static CellSet operator -(CellSet left, CellSet right) =>
        new(left._upper & ~right._upper, left._lower & ~right._lower);

    /// <summary>The cells not in the set.</summary>
    public static CellSet operator ~(CellSet set) => new(~set._upper & UpperAll, ~set._lower & LowerAll);

    /// <summary>Which of a house's nine cells are in the set: bit p for its cell p in reading order.</summary>
    internal int PlacesIn(House house)
    {
        var index = house.Index;
        if (index < 6)
            return (int)(_upper >> (index * 9)) & 0x1FF;
        if (index < 9)
            return (int)(_lower >> (index * 9 - Split)) & 0x1FF;
        return index < 18 ? ColumnPlaces(index - 9) : BlockPlaces(index - 18);
    }

    /// <summary>The cells of a band, 0 to 2, that are in the set: bit 9r + c for its row r and column c, 0-based.</summary>
    internal uint Band(int band) => (uint)(band < 2 ? _upper >> (band * 27) : _lower) & 0x7FF_FFFF;

    private int ColumnPlaces(int column)
    {
        const ulong Column = 1ul | 1ul << 9 | 1ul << 18 | 1ul << 27 | 1ul << 36 | 1ul << 45;
        if (Bmi2.X64.IsSupported)
        {
            return (int)(Bmi2.X64.ParallelBitExtract(_upper, Column << column)
                | Bmi2.X64.ParallelBitExtract(_lower, (Column & LowerAll) << column) << 6);
        }

        var places = 0;
        for (var row = 0; row < 6; row++)
            places |= (int)(_upper >> (row * 9 + column) & 1) << row;
        for (var row = 0; row < 3; row++)
            places |= (int)(_lower >> (row * 9 + column) & 1) << (row + 6);
        return places;
    }

    private int BlockPlaces(int block)
    {
        var band = block < 6 ? _upper >> (block / 3 * 27) : _lower;
        var cells = band >> (block % 3 * 3);
        return (int)(cells & 7 | cells >> 6 & 0x38 | cells >> 12 & 0x1C0);
    }

    /// <summary>Reads 81 characters, <c>x</c> in and <c>.</c> out; white space does not count.</summary>
    /// <param name="text">What to read.</param>
    /// <exception cref="FormatException">There are not 81 such characters.</exception>
    public static CellSet Parse(string text)
    {
        ArgumentNullException.ThrowIfNull(text);
        var set = Empty;
        var index = 0;
        foreach (var character in text.Where(c => !char.IsWhiteSpace(c)))
        {
            if (index == Cell.Count || character is not ('x' or '.'))
                throw new FormatException("A cell set is 81 characters, 'x' in and '.' out.");
            if (character == 'x')
                set = set.With(Cell.Unchecked(index));
            index++;
        }

        return index == Cell.Count ? set : throw new FormatException("A cell set is 81 characters, 'x' in and '.' out.");
    }

    /// <summary>Nine lines of nine characters, <c>x</c> in and <c>.</c> out.</summary>
    public override string ToString()
    {
        var text = new StringBuilder(90);
        for (var index = 0; index < Cell.Count; index++)
        {
            if (index > 0 && index % 9 == 0)
                text.Append('\n');
            text.Append(Contains(Cell.Unchecked(index)) ? 'x' : '.');
        }

        return text.ToString();
    }

    private static CellSet One(Cell cell) => cell.Index < Split ? new(1ul << cell.Index, 0) : new(0, 1ul << (cell.Index - Split));

    /// <summary>The cells in reading order.</summary>
    public Enumerator GetEnumerator() => new(_upper, _lower);

    IEnumerator<Cell> IEnumerable<Cell>.GetEnumerator() => GetEnumerator();

    IEnumerator IEnumerable.GetEnumerator() => GetEnumerator();

    /// <summary>Walks a set in reading order without allocating.</summary>
    public struct Enumerator : IEnumerator<Cell>
    {
        private ulong _upper;
        private ulong _lower;

        internal Enumerator(ulong upper, ulong lower) => (_upper, _lower) = (upper, lower);

        /// <summary>The cell the walk is at.</summary>
        public Cell Current { get; private set; }

        readonly object IEnumerator.Current => Current;

        /// <summary>Goes to the next cell.</summary>
        /// <returns>Whether there is one.</returns>
        public bool MoveNext()
        {
            if (_upper != 0)
            {
                Current = Cell.Unchecked(BitOperations.TrailingZeroCount(_upper));
                _upper &= _upper - 1;
                return true;
            }

            if (_lower == 0)
                return false;
            Current = Cell.Unchecked(Split + BitOperations.TrailingZeroCount(_lower));
            _lower &= _lower - 1;
            return true;
        }

        /// <summary>Not supported.</summary>
        /// <exception cref="NotSupportedException">Always.</exception>
        public readonly void Reset() => throw new NotSupportedException();

        /// <summary>Nothing to release.</summary>
        public readonly void Dispose()
        {
        }
    }
}
