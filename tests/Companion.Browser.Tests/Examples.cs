namespace Companion.Browser.Tests;

/// <summary>Grids for the browser tests.</summary>
internal static class Examples
{
    /// <summary>
    /// The easy example of P. Norvig's essay "Solving Any Sudoku Puzzle" (2006), its grid1: r5c5 can only be 5.
    /// </summary>
    public const string Easy = "530070000600195000098000060800060003400803001700020006060000280000419005000080079";
}
