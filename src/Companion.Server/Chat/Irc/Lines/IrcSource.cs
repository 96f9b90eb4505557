namespace Companion.Server.Chat.Irc.Lines;

/// <summary>Who a line comes from: <c>nick!user@host</c>, or the name of a server.</summary>
/// <param name="Nick">The nick, or the server's name.</param>
/// <param name="User">The user name, or null.</param>
/// <param name="Host">The host, or null.</param>
internal sealed record IrcSource(string Nick, string? User = null, string? Host = null)
{
    /// <summary>Reads a source as it stands after the colon.</summary>
    /// <param name="text">The text, without the colon.</param>
    public static IrcSource Parse(string text)
    {
        var (front, host) = Cut(text, '@');
        var (nick, user) = Cut(front, '!');
        return new(nick, user, host);
    }

    /// <summary>The source as it stands in a line.</summary>
    public override string ToString() => Nick + (User is null ? "" : "!" + User) + (Host is null ? "" : "@" + Host);

    private static (string Front, string? Back) Cut(string text, char at) =>
        text.IndexOf(at, StringComparison.Ordinal) is var index and >= 0 ? (text[..index], text[(index + 1)..]) : (text, null);
}
