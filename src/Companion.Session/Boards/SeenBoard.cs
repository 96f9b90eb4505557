using Companion.Engine;
using Companion.Session.State;

namespace Companion.Session.Boards;

/// <summary>What a viewer can tell from the screen: the digits, and what finished marks and strikes imply.</summary>
public static class SeenBoard
{
    /// <summary>
    /// The seen board of a grid, or every reason why there is none: equal digits in a house, cells without a candidate.
    /// </summary>
    /// <param name="grid">The grid.</param>
    /// <param name="writing">Cells whose lists are being written and say nothing yet.</param>
    public static Reading<Board> Of(Grid grid, CellSet writing) => Board.Read(Draft(grid, writing));

    /// <summary>The same, not validated.</summary>
    public static GridDraft Draft(Grid grid, CellSet writing)
    {
        ArgumentNullException.ThrowIfNull(grid);
        return new(Text(grid)) { Placed = grid.Placed.Cells, Removed = MarkMeaning.Of(grid, writing) };
    }

    private static string Text(Grid grid) => string.Create(Cell.Count, grid.Digits, static (text, digits) =>
    {
        text.Fill(BoardText.Blank);
        foreach (var (cell, digit) in digits)
            text[cell.Index] = (char)('0' + digit.Value);
    });
}
