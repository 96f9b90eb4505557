namespace Companion.Engine;

/// <summary>A digit in a cell: a possibility, a placement or a removal. The default value is 1 in r1c1.</summary>
/// <param name="Cell">The cell.</param>
/// <param name="Digit">The digit.</param>
public readonly record struct Candidate(Cell Cell, Digit Digit) : IComparable<Candidate>
{
    /// <summary>How many candidates a grid has at most: 729.</summary>
    public const int Count = Cell.Count * Digit.Count;

    /// <summary>Reads a name like <c>r4c7=5</c>.</summary>
    /// <param name="text">What to read.</param>
    /// <param name="candidate">The candidate, or the default where the text is none.</param>
    /// <returns>Whether the text names a candidate and nothing else.</returns>
    public static bool TryParse(ReadOnlySpan<char> text, out Candidate candidate)
    {
        candidate = default;
        if (text.Length != 6 || text[4] != '=' || !Cell.TryParse(text[..4], out var cell)
            || !Digit.TryParse(text[5..], out var digit))
            return false;
        candidate = new(cell, digit);
        return true;
    }

    /// <summary>Reads a name like <c>r4c7=5</c>.</summary>
    /// <param name="text">What to read.</param>
    /// <exception cref="FormatException">The text names no candidate.</exception>
    public static Candidate Parse(string text) => TryParse(text, out var candidate)
        ? candidate
        : throw new FormatException($"'{text}' is not a candidate such as r4c7=5.");

    /// <summary>By cell in reading order, then by digit.</summary>
    public int CompareTo(Candidate other)
    {
        var byCell = Cell.CompareTo(other.Cell);
        return byCell != 0 ? byCell : Digit.CompareTo(other.Digit);
    }

    /// <summary>The candidate's name, such as <c>r4c7=5</c>.</summary>
    public override string ToString() => $"{Cell}={Digit}";
}
