namespace Companion.Server.Chat.Irc;

/// <summary>
/// How long to wait before connecting again: anything from nothing to a limit that doubles each time ("full jitter"), so that
/// programs that lost the same server do not all come back at once. A connection that held for a while begins anew.
/// </summary>
/// <param name="random">Where the jitter comes from.</param>
internal sealed class Backoff(Random random)
{
    /// <summary>The first limit.</summary>
    public static readonly TimeSpan First = TimeSpan.FromSeconds(2);

    /// <summary>The greatest limit.</summary>
    public static readonly TimeSpan Most = TimeSpan.FromMinutes(2);

    /// <summary>How long a connection must have held to count as good.</summary>
    public static readonly TimeSpan Good = TimeSpan.FromMinutes(1);

    private TimeSpan _limit = First;

    /// <summary>The wait after a connection that ended.</summary>
    /// <param name="held">How long we were signed in; zero if we never were.</param>
    public TimeSpan Next(TimeSpan held)
    {
        if (held >= Good)
            _limit = First;
        var wait = _limit * random.NextDouble();
        _limit = _limit * 2 < Most ? _limit * 2 : Most;
        return wait;
    }
}
