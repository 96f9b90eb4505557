using Companion.Engine;
using Companion.Session.State;
using Companion.Session.Views;

namespace Companion.Drawing.Tests.Stills;

/// <summary>Stages to draw: a grid of our own with all that can be written in a cell.</summary>
internal static class Boards
{
    private const string Grid = """
        4 . . | 2 . . | . 7 .
        . . 8 | . 5 . | 1 . .
        . 6 . | . . 9 | . . 3
        ------+-------+------
        5 . . | . 8 . | . 4 .
        . 2 . | 6 . 1 | . 9 .
        . 9 . | . 4 . | . . 2
        ------+-------+------
        7 . . | 1 . . | . 5 .
        . . 3 | . 9 . | 6 . .
        . 5 . | . . 4 | . . 8
        """;

    internal static readonly Credit Credit = new("Evening walk", "A. Setter", "https://example.org/evening-walk");

    private static readonly Board Board = Board.Parse(Grid);

    internal static StageView View { get; } = new(1, Credit, [.. CellSet.All.Select(Written)], null, null);

    private static StageCell Written(Cell cell) => cell.ToString() switch
    {
        "r5c5" => new(Digit.Of(7), false, null, default, default),
        "r1c2" => new(null, false, DigitSet.Parse("13"), default, DigitSet.Parse("3")),
        "r2c1" => new(null, false, null, DigitSet.Parse("29"), default),
        _ => new(Board.DigitAt(cell), Board.Givens.Contains(cell), null, default, default),
    };
}
