using Companion.Server.Chat.Irc.Lines;

namespace Companion.Server.Chat.Irc.Talk;

/// <summary>What the server says of itself in <c>005</c>, as far as it matters here.</summary>
internal sealed class ServerTraits
{
    /// <summary>Which letters are the same.</summary>
    public Casemapping Casemapping { get; private set; } = Casemapping.Rfc1459;

    /// <summary>The mode by which a program says that it is one, or null. Source: IRCv3, Bot Mode.</summary>
    public string? BotMode { get; private set; }

    /// <summary>Takes a <c>005</c> line.</summary>
    /// <param name="message">The line.</param>
    public void Take(IrcMessage message)
    {
        foreach (var trait in message.Parameters)
        {
            if (trait.StartsWith("CASEMAPPING=", StringComparison.Ordinal))
                Casemapping = Casemapping.Named(trait["CASEMAPPING=".Length..]);
            else if (trait.StartsWith("BOT=", StringComparison.Ordinal) && trait.Length == 5 && char.IsAsciiLetter(trait[4]))
                BotMode = trait[4..];
        }
    }
}
