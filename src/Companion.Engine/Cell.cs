namespace Companion.Engine;

/// <summary>One of the 81 cells of the grid, named as the trade names it: <c>r4c7</c>. The default value is r1c1.</summary>
public readonly record struct Cell : IComparable<Cell>
{
    private readonly byte _index;

    private Cell(int index) => _index = (byte)index;

    /// <summary>How many cells there are: 81.</summary>
    public const int Count = 81;

    /// <summary>Index row by row, 0 to 80.</summary>
    public int Index => _index;

    /// <summary>Row, 1 to 9 from the top.</summary>
    public int Row => _index / 9 + 1;

    /// <summary>Column, 1 to 9 from the left.</summary>
    public int Column => _index % 9 + 1;

    /// <summary>Block, 1 to 9 in reading order.</summary>
    public int Block => _index / 27 * 3 + _index % 9 / 3 + 1;

    /// <summary>The 20 cells that share a house with this one, without itself.</summary>
    public CellSet Peers => Geometry.Peers[_index];

    /// <summary>The row, column and block of this cell, in this order.</summary>
    public HouseSet Houses => Geometry.HousesOf[_index];

    /// <summary>The cell with this index.</summary>
    /// <param name="index">0 to 80, row by row.</param>
    /// <exception cref="ArgumentOutOfRangeException"><paramref name="index"/> is not 0 to 80.</exception>
    public static Cell At(int index)
    {
        ArgumentOutOfRangeException.ThrowIfNegative(index);
        ArgumentOutOfRangeException.ThrowIfGreaterThanOrEqual(index, Count);
        return new(index);
    }

    /// <summary>The cell in this row and column.</summary>
    /// <param name="row">1 to 9 from the top.</param>
    /// <param name="column">1 to 9 from the left.</param>
    /// <exception cref="ArgumentOutOfRangeException">One of them is not 1 to 9.</exception>
    public static Cell Of(int row, int column)
    {
        ArgumentOutOfRangeException.ThrowIfLessThan(row, 1);
        ArgumentOutOfRangeException.ThrowIfGreaterThan(row, 9);
        ArgumentOutOfRangeException.ThrowIfLessThan(column, 1);
        ArgumentOutOfRangeException.ThrowIfGreaterThan(column, 9);
        return new((row - 1) * 9 + column - 1);
    }

    internal static Cell Unchecked(int index) => new(index);

    /// <summary>Whether the two cells share a house and are not the same cell.</summary>
    public bool Sees(Cell other) => Peers.Contains(other);

    /// <summary>Reads a name like <c>r4c7</c>; upper case is taken too.</summary>
    /// <param name="text">What to read.</param>
    /// <param name="cell">The cell, or the default where the text is none.</param>
    /// <returns>Whether the text names a cell and nothing else.</returns>
    public static bool TryParse(ReadOnlySpan<char> text, out Cell cell)
    {
        cell = default;
        if (text.Length != 4 || (text[0] | 32) != 'r' || (text[2] | 32) != 'c'
            || text[1] is < '1' or > '9' || text[3] is < '1' or > '9')
            return false;
        cell = Of(text[1] - '0', text[3] - '0');
        return true;
    }

    /// <summary>Reads a name like <c>r4c7</c>.</summary>
    /// <param name="text">What to read.</param>
    /// <exception cref="FormatException">The text names no cell.</exception>
    public static Cell Parse(string text) =>
        TryParse(text, out var cell) ? cell : throw new FormatException($"'{text}' is not a cell such as r4c7.");

    /// <summary>Reading order.</summary>
    public int CompareTo(Cell other) => _index.CompareTo(other._index);

    /// <summary>The cell's name, such as <c>r4c7</c>.</summary>
    public override string ToString() => $"r{Row}c{Column}";
}
