using Companion.Session.Commands;
using Companion.Session.Events;
using Companion.Session.State;

namespace Companion.Session.Audience;

/// <summary>Decides on who may open the audience's page.</summary>
internal static class DoorRequests
{
    public static Decision Set(SessionState state, SetAudienceDoor set, DateTimeOffset now)
    {
        if (!Enum.IsDefined(set.Door))
            return Decision.Refuse("The audience's page is closed, open by its link, or open: choose one of them.");
        return state.Asks.Door == set.Door ? Decision.Nothing : Decision.Of(new AudienceDoorSet(now, set.Door));
    }
}
