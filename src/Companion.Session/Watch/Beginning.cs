using Companion.Engine;
using Companion.Session.State;
using Companion.Session.Views;

namespace Companion.Session.Watch;

/// <summary>Finds the entry by which something came to be so.</summary>
internal static class Beginning
{
    /// <summary>The last entry before which something was not so that is so now; null where it was so from the start.</summary>
    public static Step? Of(SessionState state, Func<Grid, CellSet, bool> isSo)
    {
        foreach (var step in state.History.Made)
        {
            if (step.Grid.Loading != state.Grid.Loading || !isSo(step.Grid, step.Writing))
                return step;
        }

        return null;
    }

    /// <summary>A note about something that is so now.</summary>
    public static WatchNote Note(SessionState state, WatchKind kind, string text, CellSet cells, Func<Grid, CellSet, bool> isSo)
    {
        var step = Of(state, isSo);
        return new(kind, text, [.. cells], step?.Entry.At, step is null ? 0 : state.Entries - step.Number);
    }
}
