using Companion.Session.Asks.Delays;

namespace Companion.Session.Asks.Calls;

/// <summary>Compares the time of a viewer's call with that of the presenter's entry.</summary>
public static class CallTiming
{
    /// <summary>
    /// With the presenter's entry at 100 s and viewers 2 to 15 s behind, a call at 101.9 is first, one at 102 to 114.99 is close,
    /// one at 115 comes after.
    /// </summary>
    /// <param name="placed">When the presenter placed the digit.</param>
    /// <param name="called">When the first right call came in.</param>
    /// <param name="delay">How far the quickest and the slowest viewer are behind.</param>
    public static CallStanding Of(DateTimeOffset placed, DateTimeOffset called, Delay delay)
    {
        ArgumentNullException.ThrowIfNull(delay);
        var behind = (called - placed).TotalSeconds;
        return behind < delay.Least ? CallStanding.First : behind < delay.Most ? CallStanding.Close : CallStanding.After;
    }
}
