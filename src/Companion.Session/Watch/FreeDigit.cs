using Companion.Engine;
using Companion.Session.Boards;
using Companion.Session.State;
using Companion.Session.Views;

namespace Companion.Session.Watch;

/// <summary>
/// Tells of block marks that are down to one place: of two places one has gone, so that the other is the digit.
/// </summary>
internal static class FreeDigit
{
    public static IEnumerable<WatchNote> Notes(SessionState state, Solution solution)
    {
        foreach (var mark in state.Grid.BlockMarks)
        {
            var places = Places(state.Grid, state.Writing, mark);

            // A mark that misses its digit's cell frees nothing; WrongStrike speaks up about it.
            if (places.Count != 1 || solution[places.First] != mark.Digit)
                continue;
            yield return Beginning.Note(
                state,
                WatchKind.FreeDigit,
                $"The block mark {mark.Digit} in block {mark.Block.Number} is down to one place, {places.First}: a free digit.",
                places,
                (grid, writing) =>
                    grid.BlockMarks[mark.Block, mark.Digit] is { } before && Places(grid, writing, before).Count == 1);
        }
    }

    private static CellSet Places(Grid grid, CellSet writing, BlockMark mark)
    {
        if (!MarkMeaning.Counts(grid, mark))
            return CellSet.Empty;
        var gone = MarkMeaning.Of(grid, writing)[mark.Digit];
        return MarkMeaning.LivePlaces(grid, mark) - gone;
    }
}
