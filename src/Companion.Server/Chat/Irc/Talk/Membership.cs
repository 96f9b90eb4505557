using Companion.Server.Chat.Irc.Lines;

namespace Companion.Server.Chat.Irc.Talk;

/// <summary>
/// Being in the channel: we join, and come back a while after we were sent out, later each time. A ban ends it. It also learns what
/// others see of us, by which the room in a line is measured.
/// </summary>
/// <param name="channel">The channel.</param>
/// <param name="server">The server's name, for the presenter.</param>
/// <param name="traits">Which names are the same.</param>
/// <param name="clock">The clock.</param>
internal sealed class Membership(string channel, string server, ServerTraits traits, TimeProvider clock)
{
    /// <summary>How long to stay away after the first time; each time more it is twice as long.</summary>
    public static readonly TimeSpan Pause = TimeSpan.FromSeconds(30);

    private const int MostDoublings = 5;

    private int _sentOut;

    /// <summary>Whether we are in the channel.</summary>
    public bool IsIn { get; private set; }

    /// <summary>We, as others see us.</summary>
    public IrcSource Self { get; private set; } = new("*");

    /// <summary>When to try to come in again, or null.</summary>
    public DateTimeOffset? ComesBackAt { get; private set; }

    /// <summary>Whether a line comes from us.</summary>
    /// <param name="message">The line.</param>
    public bool IsOurs(IrcMessage message) => message.Source is { } source && IsUs(source.Nick);

    /// <summary>Whether a name is the channel's.</summary>
    /// <param name="name">The name.</param>
    public bool IsHere(string name) => traits.Casemapping.AreSame(name, channel);

    /// <summary>The server has let us in.</summary>
    /// <param name="nick">The nick that it gave us.</param>
    public IrcStep Enter(string nick)
    {
        Self = new(nick);
        return Join();
    }

    /// <summary>Tries again to come in.</summary>
    public IrcStep Join()
    {
        ComesBackAt = null;
        return new IrcStep.Send(IrcMessage.Of("JOIN", channel));
    }

    /// <summary>Takes a line.</summary>
    /// <param name="message">The line.</param>
    /// <returns>What it leads to.</returns>
    public IrcStep? Take(IrcMessage message)
    {
        if (IsOurs(message) && message.Source!.Host is not null)
            Self = message.Source;
        switch (message.Command)
        {
            case "JOIN" when IsOurs(message) && IsHere(message[0]):
                IsIn = true;
                return new IrcStep.Tell(new(ChatPhase.Connected, $"The chat is connected: {channel} on {server}."));
            case "KICK" when IsHere(message[0]) && IsUs(message[1]):
            case "PART" when IsHere(message[0]) && IsOurs(message):
                return Wait("The companion was sent out of the channel");
            case "NICK" when IsOurs(message):
                Self = Self with { Nick = message[0] };
                return null;
            case "396" when message[1].Length > 0: // RPL_HOSTHIDDEN, from memory: our host is shown as this one from now on
                Self = Self with { Host = message[1].Split('@')[^1] };
                return null;
            case "471" or "437" or "480" when IsHere(message[1]):
                return Wait("The channel lets nobody in now");
            case "473" or "474" or "475" or "477" when IsHere(message[1]):
                return new IrcStep.End(Reasons.NotAllowedIn, true);
            case "403" or "405" or "476" or "479" when IsHere(message[1]):
                return new IrcStep.End(Reasons.NoSuchChannel, true);
            default:
                return null;
        }
    }

    private bool IsUs(string nick) => traits.Casemapping.AreSame(nick, Self.Nick);

    private IrcStep.Tell Wait(string why)
    {
        IsIn = false;
        var pause = Pause * (1 << Math.Min(_sentOut++, MostDoublings));
        ComesBackAt = clock.GetUtcNow() + pause;
        return new(new(ChatPhase.Connecting, $"{why}: it tries again in {pause.TotalSeconds:0} seconds."));
    }
}
