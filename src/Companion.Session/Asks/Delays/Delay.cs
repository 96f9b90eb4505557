namespace Companion.Session.Asks.Delays;

/// <summary>How far viewers are behind the presenter. Viewers of one broadcast differ.</summary>
/// <param name="Seconds">The delay that answers are given by, 0 to 60.</param>
/// <param name="Least">The delay of the quickest viewer, in seconds.</param>
/// <param name="Most">The delay of the slowest, in seconds; at least <paramref name="Least"/>.</param>
public sealed record Delay(int Seconds, double Least, double Most)
{
    /// <summary>The longest delay: 60 seconds.</summary>
    public const int MostSeconds = 60;

    // Unless it was measured: the quickest of live video made for low latency (vendors' documents give 2 to 8 s).
    private const double Quick = 2;

    /// <summary>The moment that viewers see at another moment.</summary>
    /// <param name="now">That moment.</param>
    public DateTimeOffset SeenAt(DateTimeOffset now) => now - TimeSpan.FromSeconds(Seconds);

    /// <summary>A delay that nobody has measured.</summary>
    /// <param name="seconds">0 to 60.</param>
    public static Delay OfSeconds(int seconds) => new(seconds, Math.Min(Quick, seconds), seconds);
}
