using Companion.Session.Commands;
using Companion.Session.Events;
using Companion.Session.State;

namespace Companion.Session.Ladders;

/// <summary>Decides on cutting the ladder.</summary>
internal static class LadderRequests
{
    public static Decision Stop(SessionState state, StopLadder stop, DateTimeOffset now) =>
        state.LadderCut.Last == stop.Last ? Decision.Nothing : Decision.Of(new LadderStopped(now, stop.Last));

    public static Decision Switch(SessionState state, SwitchFamily wanted, DateTimeOffset now) =>
        state.LadderCut.SwitchOf(wanted.Family)?.IsOn == wanted.IsOn
            ? Decision.Nothing
            : Decision.Of(new FamilySwitched(now, wanted.Family, wanted.IsOn));
}
