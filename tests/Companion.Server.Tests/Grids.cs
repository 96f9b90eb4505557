namespace Companion.Server.Tests;

/// <summary>Grids that several tests use, each with its source.</summary>
internal static class Grids
{
    /// <summary>P. Norvig, "Solving Any Sudoku Puzzle" (2006), grid1; also the example of the GLPK manual.</summary>
    public const string EssayOne = "530070000600195000098000060800060003400803001700020006060000280000419005000080079";

    /// <summary>P. Norvig, "Solving Any Sudoku Puzzle" (2006), grid2.</summary>
    public const string EssayTwo = "400000805030000000000700000020000060000080400000010000000603070500200000104000000";

    /// <summary>A position of our own with a unique rectangle in rows 4 and 6; its digits leave one solution.</summary>
    public const string WithRectangle = "7.13956..956..73.13.8.16957.357..1981975382.6.841.957.513.7.8628796..415..2.517..";

    /// <summary>A position of our own with a unique rectangle in rows 1 and 6, but more than one solution.</summary>
    public const string WithUselessRectangle = ".496.78..6..39.147.7348...2...9....8...258.168..7.....7..5.42.9..517..844.68.9571";

    /// <summary>The example of the SWI-Prolog manual (clpfd), problem 1, and its solution.</summary>
    public const string PrologManual = "000000000000003085001020000000507000004000100090000000500000073002010000000040009";

    /// <summary>The solution of <see cref="PrologManual"/>, as published with it.</summary>
    public const string PrologManualSolved = "987654321246173985351928746128537694634892157795461832519286473472319568863745219";

    /// <summary>The easy example of the code that goes with Russell and Norvig's textbook.</summary>
    public const string Textbook = "003020600900305001001806400008102900700000008006708200002609500800203009005010300";

    /// <summary>The solution of <see cref="Textbook"/>.</summary>
    public const string TextbookSolved = "483921657967345821251876493548132976729564138136798245372689514814253769695417382";
}
