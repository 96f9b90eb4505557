using Companion.Session.Audience;
using Companion.Session.Events;
using Companion.Session.State;

namespace Companion.Session.Shows;

/// <summary>What is set for the broadcast and stays from one show to the next, as events that set it again.</summary>
internal static class CarriedSettings
{
    /// <summary>The events that set on one state what is set on another. What differs in nothing needs none.</summary>
    /// <param name="from">The state before the show.</param>
    /// <param name="onto">The state on which they happen.</param>
    /// <param name="now">When.</param>
    public static IEnumerable<Event> Of(SessionState from, SessionState onto, DateTimeOffset now)
    {
        foreach (var (scene, frame) in from.Scenes.Where(placed => onto.Scenes[placed.Key] != placed.Value))
            yield return new FramePlaced(now, scene, frame);
        if (from.LadderCut.Last != onto.LadderCut.Last)
            yield return new LadderStopped(now, from.LadderCut.Last);
        foreach (var family in from.LadderCut.Switched.Where(family => onto.LadderCut.SwitchOf(family.Family) != family))
            yield return new FamilySwitched(now, family.Family, family.IsOn);
        if (from.Asks.Limits is { } limits && limits != onto.Asks.Limits)
            yield return new AsksLimited(now, limits);
        if (from.Asks.Delay is { } delay && delay != onto.Asks.Delay)
            yield return new DelaySet(now, delay);

        // Viewers are let in when there is something to see.
        if (onto.Asks.Door != AudienceDoor.Closed)
            yield return new AudienceDoorSet(now, AudienceDoor.Closed);
    }
}
