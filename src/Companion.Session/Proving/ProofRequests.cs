using Companion.Session.Commands;
using Companion.Session.Events;
using Companion.Session.State;

namespace Companion.Session.Proving;

/// <summary>Decides on attributions, which come beside the entries and may come late.</summary>
internal static class ProofRequests
{
    public static Decision Attribute(SessionState state, AttributeEntry found, DateTimeOffset now) =>
        state.History.Made.Any(step => step.Number == found.Entry)
        && !state.Attributions.Any(attributed => attributed.Entry == found.Entry)
            ? Decision.Of(new EntryAttributed(now, found.Entry, found.Attribution))
            : Decision.Nothing;
}
