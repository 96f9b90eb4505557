namespace Companion.Engine;

/// <summary>One of the nine digits. The default value is the digit 1.</summary>
public readonly record struct Digit : IComparable<Digit>
{
    // Stored less one, so that default is a valid digit and the value indexes arrays.
    private readonly byte _index;

    private Digit(int index) => _index = (byte)index;

    /// <summary>How many digits there are: 9.</summary>
    public const int Count = 9;

    /// <summary>Index, 0 to 8; the digit less one.</summary>
    public int Index => _index;

    /// <summary>The digit as written, 1 to 9.</summary>
    public int Value => _index + 1;

    /// <summary>Every digit, 1 to 9, ascending.</summary>
    public static DigitSet All => DigitSet.All;

    /// <summary>The digit with this value.</summary>
    /// <param name="value">1 to 9.</param>
    /// <exception cref="ArgumentOutOfRangeException"><paramref name="value"/> is not 1 to 9.</exception>
    public static Digit Of(int value)
    {
        ArgumentOutOfRangeException.ThrowIfLessThan(value, 1);
        ArgumentOutOfRangeException.ThrowIfGreaterThan(value, Count);
        return new(value - 1);
    }

    internal static Digit At(int index) => new(index);

    /// <summary>Reads one character <c>1</c> to <c>9</c>.</summary>
    /// <param name="text">What to read.</param>
    /// <param name="digit">The digit, or the default where the text is none.</param>
    /// <returns>Whether the text is a digit from 1 to 9 and nothing else.</returns>
    public static bool TryParse(ReadOnlySpan<char> text, out Digit digit)
    {
        digit = default;
        if (text.Length != 1 || text[0] is < '1' or > '9')
            return false;
        digit = new(text[0] - '1');
        return true;
    }

    /// <summary>Reads one character <c>1</c> to <c>9</c>.</summary>
    /// <param name="text">What to read.</param>
    /// <exception cref="FormatException">The text is not one digit from 1 to 9.</exception>
    public static Digit Parse(string text) =>
        TryParse(text, out var digit) ? digit : throw new FormatException($"'{text}' is not a digit from 1 to 9.");

    /// <summary>Ascending order.</summary>
    public int CompareTo(Digit other) => _index.CompareTo(other._index);

    /// <summary>The digit as one character.</summary>
    public override string ToString() => ((char)('1' + _index)).ToString();
}
