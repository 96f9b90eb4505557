namespace Companion.Server.Chat.Irc.Pace;

/// <summary>
/// How fast lines may go out. The rule of RFC 1459 section 8.10: each line moves a timer on by its cost, and a line may go while the
/// timer is less than so many lines ahead of now. So no more than <c>burst + T / cost</c> lines go out in any time T.
/// </summary>
/// <param name="cost">The time that one line costs.</param>
/// <param name="burst">How many lines may go at once after a rest.</param>
/// <param name="clock">The clock.</param>
internal sealed class SendPace(TimeSpan cost, int burst, TimeProvider clock)
{
    private readonly long _began = clock.GetTimestamp();

    private TimeSpan _timer;

    /// <summary>Counts one line more.</summary>
    /// <returns>How long that line has to wait; zero for not at all.</returns>
    public TimeSpan Take()
    {
        var now = clock.GetElapsedTime(_began);
        _timer = (_timer > now ? _timer : now) + cost;
        var ahead = _timer - now - (cost * burst);
        return ahead > TimeSpan.Zero ? ahead : TimeSpan.Zero;
    }
}
