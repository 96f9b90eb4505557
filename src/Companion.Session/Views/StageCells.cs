using System.Collections.Immutable;
using Companion.Engine;
using Companion.Session.State;

namespace Companion.Session.Views;

/// <summary>Makes the cells of stages.</summary>
public static class StageCells
{
    /// <summary>The cells of a board with nothing written in the open ones.</summary>
    /// <param name="board">The board.</param>
    public static ImmutableArray<StageCell> Of(Board board)
    {
        ArgumentNullException.ThrowIfNull(board);
        return [.. CellSet.All.Select(cell => new StageCell(board.DigitAt(cell), board.Givens.Contains(cell), null, default, default))];
    }

    /// <summary>The cells of a board with every candidate that stands written in the open ones.</summary>
    /// <param name="board">The board.</param>
    public static ImmutableArray<StageCell> WithCandidates(Board board)
    {
        ArgumentNullException.ThrowIfNull(board);
        return [.. CellSet.All.Zip(Of(board), (cell, written) =>
            board.Open.Contains(cell) ? written with { CellMark = board[cell] } : written)];
    }

    // Those on air: what the presenter wrote, and nothing that is computed.
    internal static ImmutableArray<StageCell> Of(Grid grid) => [.. CellSet.All.Select(cell => new StageCell(
        grid.DigitAt(cell),
        grid.Givens.Contains(cell),
        grid.CellMarks[cell] is { IsEmpty: false } list ? list : null,
        grid.BlockMarks.In(cell),
        grid.Struck[cell]))];
}
