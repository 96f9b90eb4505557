namespace Companion.Engine.Planning;

/// <summary>How steep the way through a puzzle is, in five words of our own.</summary>
/// <remarks>
/// The bounds of <see cref="PuzzleGrade.Work"/> between the first four lie near the quartiles of the minimal puzzles of D. Berthier's
/// controlled-bias collection (DOI 10.5281/zenodo.17491457) that the ladder solves: each word holds about a quarter of them.
/// </remarks>
public enum Steepness
{
    /// <summary>Work up to 150: singles, and several to choose from at most times.</summary>
    Flat,

    /// <summary>Work up to 300: long ways by singles, or a few turns by locked candidates and pairs.</summary>
    Sloping,

    /// <summary>Work up to 1,500: patterns that must be known and looked for.</summary>
    Steep,

    /// <summary>More work: searches along chains, or many hard patterns one after the other.</summary>
    Sheer,

    /// <summary>The ladder does not lead to the solution.</summary>
    Unclimbed,
}
