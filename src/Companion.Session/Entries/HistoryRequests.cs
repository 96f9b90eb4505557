using Companion.Session.Events;
using Companion.Session.State;

namespace Companion.Session.Entries;

/// <summary>Decides on undo and redo.</summary>
internal static class HistoryRequests
{
    public static Decision Undo(SessionState state, DateTimeOffset now) => state.History.Last is null
        ? Decision.Refuse("This is the start: there is nothing to undo.")
        : Decision.Of(new EntryUndone(now));

    public static Decision Redo(SessionState state, DateTimeOffset now) => state.History.Next is null
        ? Decision.Refuse("There is nothing to redo: it is open only until the next entry.")
        : Decision.Of(new EntryRedone(now));
}
