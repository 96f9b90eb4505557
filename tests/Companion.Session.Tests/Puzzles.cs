namespace Companion.Session.Tests;

/// <summary>Puzzles that the tests play.</summary>
internal static class Puzzles
{
    /// <summary>
    /// The easy example of the code that goes with Russell and Norvig's textbook; naked singles alone solve it.
    /// </summary>
    public const string Easy = """
        ..3.2.6..
        9..3.5..1
        ..18.64..
        ..81.29..
        7.......8
        ..67.82..
        ..26.95..
        8..2.3..9
        ..5.1.3..
        """;

    /// <summary>Its solution, as the same code prints it.</summary>
    public const string EasySolution =
        "483921657967345821251876493548132976729564138136798245372689514814253769695417382";

    /// <summary>"A hard Sudoku puzzle which causes branching", from the examples of the GLPK manual.</summary>
    public const string Hard = "1....7.9..3..2...8..96..5....53..9...1..8...26....4...3......1..4......7..7...3..";

    /// <summary>A puzzle of our own with a unique rectangle in rows 4 and 6 at its start.</summary>
    public const string WithRectangle = "7.13956..956..73.13.8.16957.357..1981975382.6.841.957.513.7.8628796..415..2.517..";

    /// <summary>The demo's puzzle, made by our own generator, seed 2371; it needs an XY-wing.</summary>
    public const string Demo = "45...9....8..5.4.31....48..6..9......7..1..9......2..8..61....25.2.9..4....4...35";
}
