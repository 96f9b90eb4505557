namespace Companion.Server.Live.Asks;

/// <summary>Times that never go back: a clock that is set while the show runs must not let viewers see the future.</summary>
/// <param name="clock">The clock.</param>
internal sealed class SteadyClock(TimeProvider clock)
{
    private readonly DateTimeOffset _start = clock.GetUtcNow();
    private readonly long _stamp = clock.GetTimestamp();

    /// <summary>The time when this was made, and what has passed since.</summary>
    public DateTimeOffset Now => _start + clock.GetElapsedTime(_stamp);

    /// <summary>An alarm, not set yet.</summary>
    /// <param name="rings">What happens when it rings.</param>
    public ITimer Alarm(Action rings) =>
        clock.CreateTimer(_ => rings(), null, Timeout.InfiniteTimeSpan, Timeout.InfiniteTimeSpan);

    /// <summary>Sets an alarm, or takes it off.</summary>
    /// <param name="alarm">The alarm.</param>
    /// <param name="at">When it rings; null for never.</param>
    public void Set(ITimer alarm, DateTimeOffset? at)
    {
        // Timers count in whole milliseconds: never a part of one too early.
        var wait = at is { } due ? TimeSpan.FromMilliseconds(Math.Ceiling(Math.Max(0, (due - Now).TotalMilliseconds))) : Timeout.InfiniteTimeSpan;
        alarm.Change(wait, Timeout.InfiniteTimeSpan);
    }
}
