namespace Companion.Engine.Proofs;

/// <summary>A part of the grid to look at: one house or one chute. The default value is row 1.</summary>
public readonly record struct Region
{
    // 0-26 houses, 27-32 chutes.
    private readonly byte _index;

    private Region(int index) => _index = (byte)index;

    /// <summary>How many regions there are: 33.</summary>
    public const int Count = Engine.House.Count + Engine.Chute.Count;

    /// <summary>The house, or null where the region is a chute.</summary>
    public House? House => _index < Engine.House.Count ? Engine.House.Unchecked(_index) : null;

    /// <summary>The chute, or null where the region is a house.</summary>
    public Chute? Chute => _index < Engine.House.Count ? null : Engine.Chute.At(_index - Engine.House.Count);

    /// <summary>Its cells: 9 of a house, 27 of a chute.</summary>
    public CellSet Cells => House?.Cells ?? Chute!.Value.Cells;

    /// <summary>The region that is this house.</summary>
    public static Region Of(House house) => new(house.Index);

    /// <summary>The region that is this chute.</summary>
    public static Region Of(Chute chute) => new(Engine.House.Count + chute.Index);

    /// <summary>Reads the short name of a house or chute, such as <c>r4</c> or <c>band2</c>.</summary>
    /// <param name="text">What to read.</param>
    /// <param name="region">The region, or the default where the text is none.</param>
    /// <returns>Whether the text names a house or a chute and nothing else.</returns>
    public static bool TryParse(ReadOnlySpan<char> text, out Region region)
    {
        var isHouse = Engine.House.TryParse(text, out var house);
        var isChute = Engine.Chute.TryParse(text, out var chute);
        region = isHouse ? Of(house) : isChute ? Of(chute) : default;
        return isHouse || isChute;
    }

    /// <summary>Reads the short name of a house or chute, such as <c>r4</c> or <c>band2</c>.</summary>
    /// <param name="text">What to read.</param>
    /// <exception cref="FormatException">The text names neither.</exception>
    public static Region Parse(string text) => TryParse(text, out var region)
        ? region
        : throw new FormatException($"'{text}' is not a house such as r4 or a chute such as band2.");

    /// <summary>The short name of the house or chute.</summary>
    public override string ToString() => House?.ToString() ?? Chute.ToString()!;
}
