namespace Companion.Browser.Tests;

/// <summary>Grids for the browser tests.</summary>
internal static class Examples
{
    /// <summary>
    /// The easy example of P. Norvig's essay "Solving Any Sudoku Puzzle" (2006), its grid1: r5c5 can only be 5.
    /// </summary>
    public const string Easy = "530070000600195000098000060800060003400803001700020006060000280000419005000080079";

    /// <summary>A puzzle of our own with a unique rectangle in rows 4 and 6 at its start.</summary>
    public const string WithRectangle = "7.13956..956..73.13.8.16957.357..1981975382.6.841.957.513.7.8628796..415..2.517..";
}
