using System.Collections;
using System.Numerics;

namespace Companion.Engine;

/// <summary>A set of houses. The default value is the empty set. Written in order, such as <c>r4 c7 b2</c>.</summary>
public readonly record struct HouseSet : IReadOnlyCollection<House>
{
    // Bit i stands for the house with index i; 27 bits are used of the 32.
    private readonly uint _bits;

    internal HouseSet(uint bits) => _bits = bits;

    /// <summary>No house.</summary>
    public static HouseSet Empty => default;

    /// <summary>All 27 houses.</summary>
    public static HouseSet All => new((1u << House.Count) - 1);

    // The layout of House: 18 lines, then nine blocks.
    internal static HouseSet Lines => new((1u << 18) - 1);

    internal static HouseSet Blocks => All - Lines;

    internal uint Bits => _bits;

    /// <summary>How many houses it holds, 0 to 27.</summary>
    public int Count => BitOperations.PopCount(_bits);

    /// <summary>Whether it holds no house.</summary>
    public bool IsEmpty => _bits == 0;

    /// <summary>The first house: rows, then columns, then blocks.</summary>
    /// <exception cref="InvalidOperationException">The set is empty.</exception>
    public House First => _bits != 0
        ? House.Unchecked(BitOperations.TrailingZeroCount(_bits))
        : throw new InvalidOperationException("An empty house set has no first house.");

    /// <summary>The cells that lie in at least one of the houses.</summary>
    public CellSet Cells
    {
        get
        {
            var cells = CellSet.Empty;
            foreach (var house in this)
                cells |= house.Cells;
            return cells;
        }
    }

    /// <summary>The set of these houses.</summary>
    public static HouseSet Of(params ReadOnlySpan<House> houses)
    {
        var bits = 0u;
        foreach (var house in houses)
            bits |= 1u << house.Index;
        return new(bits);
    }

    /// <summary>Whether the house is in the set.</summary>
    public bool Contains(House house) => (_bits >> house.Index & 1) != 0;

    /// <summary>The set with the house added.</summary>
    public HouseSet With(House house) => new(_bits | 1u << house.Index);

    /// <summary>The houses in either set.</summary>
    public static HouseSet operator |(HouseSet left, HouseSet right) => new(left._bits | right._bits);

    /// <summary>The houses in both sets.</summary>
    public static HouseSet operator &(HouseSet left, HouseSet right) => new(left._bits & right._bits);

    /// <summary>The houses of the first set that are not in the second.</summary>
    public static HouseSet operator -(HouseSet left, HouseSet right) => new(left._bits & ~right._bits);

    /// <summary>Reads short names with one space between, such as <c>r4 c7 b2</c>; the empty text is the empty set.</summary>
    /// <param name="text">What to read.</param>
    /// <exception cref="FormatException">A word names no house.</exception>
    public static HouseSet Parse(string text)
    {
        ArgumentNullException.ThrowIfNull(text);
        return Of([.. text.Split(' ', StringSplitOptions.RemoveEmptyEntries).Select(House.Parse)]);
    }

    /// <summary>The short names with one space between.</summary>
    public override string ToString() => string.Join(' ', this);

    /// <summary>Rows, then columns, then blocks.</summary>
    public Enumerator GetEnumerator() => new(_bits);

    IEnumerator<House> IEnumerable<House>.GetEnumerator() => GetEnumerator();

    IEnumerator IEnumerable.GetEnumerator() => GetEnumerator();

    /// <summary>Walks a set in order without allocating.</summary>
    public struct Enumerator : IEnumerator<House>
    {
        private uint _rest;

        internal Enumerator(uint bits) => _rest = bits;

        /// <summary>The house the walk is at.</summary>
        public House Current { get; private set; }

        readonly object IEnumerator.Current => Current;

        /// <summary>Goes to the next house.</summary>
        /// <returns>Whether there is one.</returns>
        public bool MoveNext()
        {
            if (_rest == 0)
                return false;
            Current = House.Unchecked(BitOperations.TrailingZeroCount(_rest));
            _rest &= _rest - 1;
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
