namespace Companion.Server.Chat;

/// <summary>
/// How fast something may go on. The rule of RFC 1459 section 8.10: each time moves a timer on by its cost, and it may go on while the
/// timer is less than so many costs ahead of now. So it goes on no more than <c>burst + T / cost</c> times in any time T.
/// </summary>
/// <param name="cost">The time that one costs.</param>
/// <param name="burst">How many may go at once after a rest.</param>
/// <param name="clock">The clock.</param>
internal sealed class Pace(TimeSpan cost, int burst, TimeProvider clock)
{
    private readonly long _began = clock.GetTimestamp();
    private readonly Lock _lock = new();

    private TimeSpan _timer;

    /// <summary>Counts one more, which may have to wait.</summary>
    /// <returns>How long it has to wait; zero for not at all.</returns>
    public TimeSpan Take()
    {
        lock (_lock)
            return Step();
    }

    /// <summary>Counts one more if it need not wait.</summary>
    /// <returns>Whether it need not.</returns>
    public bool TryTake()
    {
        lock (_lock)
        {
            var before = _timer;
            if (Step() == TimeSpan.Zero)
                return true;
            _timer = before;
            return false;
        }
    }

    private TimeSpan Step()
    {
        var now = clock.GetElapsedTime(_began);
        _timer = (_timer > now ? _timer : now) + cost;
        var ahead = _timer - now - (cost * burst);
        return ahead > TimeSpan.Zero ? ahead : TimeSpan.Zero;
    }
}
