namespace Companion.Engine;

/// <summary>Three blocks side by side: a band (of rows) or a stack (of columns). The default value is the first band.</summary>
public readonly record struct Chute
{
    // 0-2 bands from the top, 3-5 stacks from the left.
    private readonly byte _index;

    private Chute(int index) => _index = (byte)index;

    /// <summary>How many chutes there are: 6.</summary>
    public const int Count = 6;

    /// <summary>Index: bands 0 to 2 from the top, stacks 3 to 5 from the left.</summary>
    public int Index => _index;

    /// <summary>Whether this is a band (rows); otherwise it is a stack (columns).</summary>
    public bool IsBand => _index < 3;

    /// <summary>Number within its kind, 1 to 3.</summary>
    public int Number => _index % 3 + 1;

    /// <summary>The 27 cells of the chute.</summary>
    public CellSet Cells => Geometry.ChuteCells[_index];

    /// <summary>The row of a band or the column of a stack, 0 to 2 from the top or left.</summary>
    internal House Line(int place) => House.Unchecked(IsBand ? _index * 3 + place : 9 + (_index - 3) * 3 + place);

    /// <summary>The block, 0 to 2 from the left or top.</summary>
    internal House Block(int place) => House.Unchecked(IsBand ? 18 + _index * 3 + place : 18 + place * 3 + _index - 3);

    /// <summary>The chute with this index.</summary>
    /// <param name="index">0 to 5: bands, then stacks.</param>
    /// <exception cref="ArgumentOutOfRangeException"><paramref name="index"/> is not 0 to 5.</exception>
    public static Chute At(int index)
    {
        ArgumentOutOfRangeException.ThrowIfNegative(index);
        ArgumentOutOfRangeException.ThrowIfGreaterThanOrEqual(index, Count);
        return new(index);
    }

    /// <summary>Reads <c>band2</c> or <c>stack3</c>.</summary>
    /// <param name="text">What to read.</param>
    /// <param name="chute">The chute, or the default where the text is none.</param>
    /// <returns>Whether the text names a chute and nothing else.</returns>
    public static bool TryParse(ReadOnlySpan<char> text, out Chute chute)
    {
        chute = default;
        if (text.IsEmpty || text[^1] is < '1' or > '3' || text[..^1] is not ("band" or "stack"))
            return false;
        chute = new((text[0] == 'b' ? 0 : 3) + text[^1] - '1');
        return true;
    }

    /// <summary>Reads <c>band2</c> or <c>stack3</c>.</summary>
    /// <param name="text">What to read.</param>
    /// <exception cref="FormatException">The text names no chute.</exception>
    public static Chute Parse(string text) =>
        TryParse(text, out var chute) ? chute : throw new FormatException($"'{text}' is not a chute such as band2 or stack3.");

    /// <summary>The short name: <c>band2</c>, <c>stack3</c>.</summary>
    public override string ToString() => $"{(IsBand ? "band" : "stack")}{Number}";
}
