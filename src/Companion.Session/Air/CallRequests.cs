using Companion.Session.Asks.Calls;
using Companion.Session.Commands;
using Companion.Session.Events;
using Companion.Session.State;

namespace Companion.Session.Air;

/// <summary>Decides on what is shown on air and kept of the cells that viewers call.</summary>
internal static class CallRequests
{
    // All cells that are open and called, whatever was called of them: that one is missing would say something of it.
    public static Decision StandBy(SessionState state, StandByCalls standBy, DateTimeOffset now)
    {
        var filled = state.Grid.Filled;
        var cells = new ValueArray<CalledCell>([.. standBy.Calls
            .Where(calls => calls.Viewers > 0 && !filled.Contains(calls.Cell))
            .OrderBy(calls => calls.Cell)
            .Select(calls => new CalledCell(calls.Cell, CallBands.Of(calls.Viewers)))]);
        if (cells.Count == 0)
            return Decision.Refuse("No viewer has called an open cell yet: there is nothing to show.");
        return cells == state.CalledStandby ? Decision.Nothing : Decision.Of(new CallsStoodBy(now, cells));
    }

    // What was found of a puzzle that is not there any more comes too late.
    public static Decision Note(SessionState state, NoteFoundFirst found, DateTimeOffset now) =>
        state.Grid.Puzzle is null || found.Loading != state.Grid.Loading || found.Cells.Count == 0
            ? Decision.Nothing
            : Decision.Of(new CellsFoundFirst(now, found.Cells));
}
