namespace Companion.Server.Live.Transport;

/// <summary>Allows so much a second for long, and more at once. For any number of threads.</summary>
/// <param name="perSecond">What it gains in a second.</param>
/// <param name="burst">What it holds when it is full, as at first.</param>
/// <param name="clock">The clock.</param>
internal sealed class TokenBucket(double perSecond, double burst, TimeProvider clock)
{
    private readonly Lock _lock = new();
    private double _gone;
    private long _filledAt = clock.GetTimestamp();

    /// <summary>Takes something out, or nothing where not so much is left.</summary>
    /// <param name="amount">How much.</param>
    /// <returns>Whether it was left.</returns>
    public bool Take(double amount)
    {
        lock (_lock)
        {
            var now = clock.GetTimestamp();
            _gone = Math.Max(0, _gone - clock.GetElapsedTime(_filledAt, now).TotalSeconds * perSecond);
            _filledAt = now;
            if (_gone + amount > burst)
                return false;
            _gone += amount;
            return true;
        }
    }
}
