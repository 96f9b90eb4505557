namespace Companion.Engine.Search;

/// <summary>What kind of puzzle the generator makes.</summary>
public sealed record GeneratorOptions
{
    /// <summary>
    /// The turn or mirror under which the givens stay in the same cells. Default: turned upside down. Null: none is asked for.
    /// </summary>
    public GridSymmetry? Symmetry { get; init; } = GridSymmetry.HalfTurn;

    /// <summary>
    /// Givens are taken away until this many are left, and never fewer. The puzzle has more where none can go, or with symmetry no set
    /// of cells that belong together and is not larger than what is still to go. Default 0: until none
    /// can go, or with symmetry no set of cells that belong together; without symmetry the puzzle is then minimal.
    /// </summary>
    public int Clues { get; init; }
}
