using Companion.Engine;
using Companion.Session.Boards;
using Companion.Session.State;
using Companion.Session.Views;

namespace Companion.Session.Watch;

/// <summary>Warns of equal digits in a house, of cells without a candidate and of digits without a place.</summary>
internal static class HouseBroken
{
    public static IEnumerable<WatchNote> Notes(SessionState state)
    {
        var reading = SeenBoard.Of(state.Grid, state.Writing);

        // Two cells can share a line and a block: one warning is enough.
        foreach (var fault in reading.Faults.DistinctBy(fault => fault.Cells))
        {
            yield return Beginning.Note(
                state, WatchKind.HouseBroken, fault.Sentence, fault.Cells, (grid, writing) => Has(grid, writing, fault));
        }

        if (!reading.IsGood)
            yield break;
        foreach (var contradiction in Contradiction.On(reading.Value).DistinctBy(contradiction => contradiction.Digit))
        {
            yield return Beginning.Note(
                state,
                WatchKind.HouseBroken,
                contradiction.Sentence,
                contradiction.House.Cells,
                (grid, writing) => Has(grid, writing, contradiction));
        }
    }

    private static bool Has(Grid grid, CellSet writing, BoardFault fault) => SeenBoard.Of(grid, writing).Faults.Contains(fault);

    private static bool Has(Grid grid, CellSet writing, Contradiction contradiction) =>
        SeenBoard.Of(grid, writing).Value is { } seen && Contradiction.On(seen).Contains(contradiction);
}
