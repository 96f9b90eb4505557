using Companion.Engine;
using Companion.Session.Boards;
using Companion.Session.State;
using Companion.Session.Views;

namespace Companion.Session.Watch;

/// <summary>
/// Warns of strikes and marks that take out a true candidate. It says where, and never which digit: of several strikes in a cell
/// the presenter has to find out.
/// </summary>
internal static class WrongStrike
{
    public static IEnumerable<WatchNote> Notes(SessionState state, Solution solution)
    {
        var grid = state.Grid;
        foreach (var cell in CellSet.All - grid.Filled)
        {
            var truth = new Candidate(cell, solution[cell]);
            if (StrikesOut(grid, truth))
            {
                yield return Note(
                    $"A strike in {cell} takes out a digit that belongs there: check the strikes in it.",
                    CellSet.Of(cell),
                    (grid, _) => StrikesOut(grid, truth));
            }

            if (LeavesOut(grid, state.Writing, truth))
            {
                yield return Note(
                    $"The list in {cell} leaves out a digit that belongs there: check it.",
                    CellSet.Of(cell),
                    (grid, writing) => LeavesOut(grid, writing, truth));
            }
        }

        foreach (var mark in grid.BlockMarks.Where(mark => Misses(grid, mark, solution)))
        {
            yield return Note(
                $"The block mark {mark.Digit} in block {mark.Block.Number} leaves out the cell where it goes: check it.",
                mark.Places,
                (grid, _) => grid.BlockMarks[mark.Block, mark.Digit] is { } before && Misses(grid, before, solution));
        }

        WatchNote Note(string text, CellSet cells, Func<Grid, CellSet, bool> isSo) =>
            Beginning.Note(state, WatchKind.WrongStrike, text, cells, isSo);
    }

    /// <summary>Whether a block mark that counts does not hold the open cell in which its digit goes.</summary>
    public static bool Misses(Grid grid, BlockMark mark, Solution solution)
    {
        var goes = mark.Block.Cells.First(cell => solution[cell] == mark.Digit);
        return MarkMeaning.Counts(grid, mark) && !mark.Places.Contains(goes) && !grid.Filled.Contains(goes);
    }

    private static bool StrikesOut(Grid grid, Candidate truth) => grid.Struck.Contains(truth);

    private static bool LeavesOut(Grid grid, CellSet writing, Candidate truth) =>
        grid.CellMarks.Cells.Contains(truth.Cell) && !writing.Contains(truth.Cell) && !grid.CellMarks.Contains(truth);
}
