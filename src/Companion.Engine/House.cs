using System.Numerics;

namespace Companion.Engine;

/// <summary>One of the 27 houses: a row, column or block. The default value is row 1.</summary>
public readonly record struct House : IComparable<House>
{
    // 0-8 rows, 9-17 columns, 18-26 blocks.
    private readonly byte _index;

    private House(int index) => _index = (byte)index;

    /// <summary>How many houses there are: 27.</summary>
    public const int Count = 27;

    /// <summary>Index: rows 0 to 8, columns 9 to 17, blocks 18 to 26.</summary>
    public int Index => _index;

    /// <summary>Row, column or block.</summary>
    public HouseKind Kind => (HouseKind)(_index / 9);

    /// <summary>Number within its kind, 1 to 9.</summary>
    public int Number => _index % 9 + 1;

    /// <summary>Whether this is a row or a column.</summary>
    public bool IsLine => _index < 18;

    /// <summary>The nine cells of the house.</summary>
    public CellSet Cells => Geometry.HouseCells[_index];

    /// <summary>The house with this index.</summary>
    /// <param name="index">0 to 26: rows, columns, blocks.</param>
    /// <exception cref="ArgumentOutOfRangeException"><paramref name="index"/> is not 0 to 26.</exception>
    public static House At(int index)
    {
        ArgumentOutOfRangeException.ThrowIfNegative(index);
        ArgumentOutOfRangeException.ThrowIfGreaterThanOrEqual(index, Count);
        return new(index);
    }

    /// <summary>The row with this number, 1 to 9 from the top.</summary>
    /// <exception cref="ArgumentOutOfRangeException"><paramref name="number"/> is not 1 to 9.</exception>
    public static House Row(int number) => Of(HouseKind.Row, number);

    /// <summary>The column with this number, 1 to 9 from the left.</summary>
    /// <exception cref="ArgumentOutOfRangeException"><paramref name="number"/> is not 1 to 9.</exception>
    public static House Column(int number) => Of(HouseKind.Column, number);

    /// <summary>The block with this number, 1 to 9 in reading order.</summary>
    /// <exception cref="ArgumentOutOfRangeException"><paramref name="number"/> is not 1 to 9.</exception>
    public static House Block(int number) => Of(HouseKind.Block, number);

    /// <summary>The house of this kind and number.</summary>
    /// <param name="kind">Row, column or block.</param>
    /// <param name="number">1 to 9.</param>
    /// <exception cref="ArgumentOutOfRangeException"><paramref name="number"/> is not 1 to 9.</exception>
    public static House Of(HouseKind kind, int number)
    {
        ArgumentOutOfRangeException.ThrowIfLessThan(number, 1);
        ArgumentOutOfRangeException.ThrowIfGreaterThan(number, 9);
        return new((int)kind * 9 + number - 1);
    }

    internal static House Unchecked(int index) => new(index);

    /// <summary>The cell at this place in reading order, 0 to 8.</summary>
    internal Cell CellAt(int place) => Cell.Unchecked(Geometry.HouseCellIndex[_index * 9 + place]);

    /// <summary>The cells at these places: bit p for place p, as <see cref="CellSet.PlacesIn"/> gives them.</summary>
    internal CellSet CellsAt(int places)
    {
        var cells = CellSet.Empty;
        for (; places != 0; places &= places - 1)
            cells = cells.With(CellAt(BitOperations.TrailingZeroCount(places)));
        return cells;
    }

    /// <summary>Reads <c>r4</c>, <c>c7</c> or <c>b2</c>; upper case is taken too.</summary>
    /// <param name="text">What to read.</param>
    /// <param name="house">The house, or the default where the text is none.</param>
    /// <returns>Whether the text names a house and nothing else.</returns>
    public static bool TryParse(ReadOnlySpan<char> text, out House house)
    {
        house = default;
        if (text.Length != 2 || text[1] is < '1' or > '9')
            return false;
        var kind = (text[0] | 32) switch { 'r' => 0, 'c' => 1, 'b' => 2, _ => -1 };
        if (kind < 0)
            return false;
        house = new(kind * 9 + text[1] - '1');
        return true;
    }

    /// <summary>Reads <c>r4</c>, <c>c7</c> or <c>b2</c>.</summary>
    /// <param name="text">What to read.</param>
    /// <exception cref="FormatException">The text names no house.</exception>
    public static House Parse(string text) =>
        TryParse(text, out var house) ? house : throw new FormatException($"'{text}' is not a house such as r4, c7 or b2.");

    /// <summary>Rows, then columns, then blocks.</summary>
    public int CompareTo(House other) => _index.CompareTo(other._index);

    /// <summary>The short name: <c>r4</c>, <c>c7</c>, <c>b2</c>.</summary>
    public override string ToString() => $"{"rcb"[_index / 9]}{Number}";
}
