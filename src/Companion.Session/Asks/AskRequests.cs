using Companion.Session.Asks.Delays;
using Companion.Session.Commands;
using Companion.Session.Events;
using Companion.Session.State;

namespace Companion.Session.Asks;

/// <summary>Decides on what the presenter sets about viewers.</summary>
internal static class AskRequests
{
    public static Decision Limit(SessionState state, LimitAsks limit, DateTimeOffset now)
    {
        if (!Enum.IsDefined(limit.Limits.Highest))
            return Decision.Refuse("Hints have the grades 1 to 4: choose one of them.");
        return state.Asks.Limits == limit.Limits ? Decision.Nothing : Decision.Of(new AsksLimited(now, limit.Limits));
    }

    public static Decision SetDelay(SessionState state, SetDelay set, DateTimeOffset now)
    {
        if (!IsPossible(set.Delay))
            return Decision.Refuse($"A delay is 0 to {Delay.MostSeconds} seconds: choose one in between.");
        return state.Asks.Delay == set.Delay ? Decision.Nothing : Decision.Of(new DelaySet(now, set.Delay));
    }

    public static Decision UseMeasured(SessionState state, UseMeasuredDelay use, DateTimeOffset now) => use.Measured is { } measured
        ? SetDelay(state, new(measured), now)
        : Decision.Refuse("No delay was measured yet: show a code and have viewers write it.");

    // A second code takes the place of the first: the delay is measured from when a code came up.
    public static Decision ShowCode(ShowDelayCode show, DateTimeOffset now) => IsCode(show.Code)
        ? Decision.Of(new DelayCodeShown(now, show.Code))
        : Decision.Refuse("A code has three to eight letters from a to z: choose another.");

    public static Decision HideCode(SessionState state, DateTimeOffset now) =>
        state.Asks.Code is null ? Decision.Nothing : Decision.Of(new DelayCodeHidden(now));

    // Written so that what is not a number is not possible.
    private static bool IsPossible(Delay delay) =>
        delay is { Seconds: >= 0 and <= Delay.MostSeconds, Least: >= 0 } && delay.Least <= delay.Most && double.IsFinite(delay.Most);

    private static bool IsCode(string code) => code.Length is >= 3 and <= 8 && code.All(char.IsAsciiLetterLower);
}
