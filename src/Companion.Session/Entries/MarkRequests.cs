using Companion.Engine;
using Companion.Session.Commands;
using Companion.Session.Events;
using Companion.Session.State;

namespace Companion.Session.Entries;

/// <summary>Decides on block marks, candidate lists and strikes. Filled cells among those chosen are left alone.</summary>
internal static class MarkRequests
{
    private static readonly Decision NoOpenCell =
        Decision.Refuse("Marks go into empty cells: choose some, or erase the digit first.");

    public static Decision Block(SessionState state, ToggleBlockMark toggle, DateTimeOffset now)
    {
        var cells = toggle.Cells - state.Grid.Filled;
        if (cells.IsEmpty)
            return NoOpenCell;
        var block = House.Block(cells.First.Block);
        if (!block.Cells.ContainsAll(cells))
            return Decision.Refuse("A block mark lies in one block: choose cells of one block.");
        var places = state.Grid.BlockMarks[block, toggle.Digit]?.Places ?? CellSet.Empty;
        if (places.ContainsAll(cells))
            return Decision.Of(new BlockMarkChanged(now, cells, toggle.Digit, IsSet: false));
        if ((places | cells).Count > BlockMarks.MostPlaces)
        {
            return Decision.Refuse(
                $"A block mark has at most {BlockMarks.MostPlaces} places: take one out first, or write candidate lists.");
        }

        return Decision.Of(new BlockMarkChanged(now, cells - places, toggle.Digit, IsSet: true));
    }

    public static Decision List(SessionState state, ToggleCellMark toggle, DateTimeOffset now)
    {
        var cells = toggle.Cells - state.Grid.Filled;
        if (cells.IsEmpty)
            return NoOpenCell;
        var (changed, isSet) = Toggle(cells, state.Grid.CellMarks[toggle.Digit]);
        return Decision.Of(new CellMarkChanged(now, changed, toggle.Digit, isSet));
    }

    public static Decision Strike(SessionState state, ToggleStrike toggle, DateTimeOffset now)
    {
        var cells = toggle.Cells - state.Grid.Filled;
        if (cells.IsEmpty)
            return NoOpenCell;
        var (changed, isSet) = Toggle(cells, state.Grid.Struck[toggle.Digit]);
        return Decision.Of(new StrikeChanged(now, changed, toggle.Digit, isSet));
    }

    public static Decision Settle(SessionState state, DateTimeOffset now) =>
        state.Writing.IsEmpty ? Decision.Nothing : Decision.Of(new MarksSettled(now));

    // Out of all where it is in all, else into those where it is not.
    private static (CellSet Changed, bool IsSet) Toggle(CellSet cells, CellSet marked) =>
        marked.ContainsAll(cells) ? (cells, false) : (cells - marked, true);
}
