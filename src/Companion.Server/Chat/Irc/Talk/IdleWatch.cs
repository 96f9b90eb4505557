using Companion.Server.Chat.Irc.Lines;

namespace Companion.Server.Chat.Irc.Talk;

/// <summary>Notices a connection that is dead without having been closed: after a silence we ask, and then wait only so long.</summary>
/// <param name="clock">The clock.</param>
internal sealed class IdleWatch(TimeProvider clock)
{
    /// <summary>The silence after which we ask.</summary>
    public static readonly TimeSpan Silence = TimeSpan.FromMinutes(2);

    /// <summary>How long we wait for the answer.</summary>
    public static readonly TimeSpan Patience = TimeSpan.FromSeconds(30);

    private bool _hasAsked;

    /// <summary>When something is to be done.</summary>
    public DateTimeOffset DueAt { get; private set; } = clock.GetUtcNow() + Silence;

    /// <summary>Something came from the server.</summary>
    public void Hear()
    {
        _hasAsked = false;
        DueAt = clock.GetUtcNow() + Silence;
    }

    /// <summary>Nothing came until <see cref="DueAt"/>.</summary>
    /// <returns>What to do about it.</returns>
    public IrcStep Wake()
    {
        if (_hasAsked)
            return new IrcStep.End(Reasons.Silent, false);
        _hasAsked = true;
        DueAt = clock.GetUtcNow() + Patience;
        return new IrcStep.Send(IrcMessage.Of("PING", "companion"));
    }
}
