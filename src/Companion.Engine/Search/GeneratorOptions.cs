namespace Companion.Engine.Search;

/// <summary>What kind of puzzle the generator makes.</summary>
public sealed record GeneratorOptions
{
    /// <summary>Whether the cells of the givens look the same turned upside down. Default: yes.</summary>
    public bool Symmetric { get; init; } = true;

    /// <summary>
    /// Givens are taken away until no more than this many are left. The puzzle has more where none can go. Default 0: until none
    /// can go; without symmetry the puzzle is then minimal.
    /// </summary>
    public int Clues { get; init; }
}
