using System.Net;
using Companion.Server.Data;

namespace Companion.Server.Chat.Irc;

/// <summary>Where the chat is, and how to behave there. The password is not here: see <see cref="ChatSecrets"/>.</summary>
internal sealed record IrcSettings
{
    /// <summary>The server's name or address; empty, as by default, for no chat.</summary>
    public string Server { get; init; } = "";

    /// <summary>The server's port; 6697 by default, the registered one for IRC over TLS.</summary>
    public int Port { get; init; } = 6697;

    /// <summary>Whether the connection is encrypted, as it is by default.</summary>
    public bool Tls { get; init; } = true;

    /// <summary>
    /// A PEM file with the certificate that the server's rests on, where that is none that the system trusts. A path that is not
    /// absolute begins at the data folder.
    /// </summary>
    public string Certificate { get; init; } = "";

    /// <summary>The nick; <c>companion</c> by default.</summary>
    public string Nick { get; init; } = "companion";

    /// <summary>The channel, as in <c>#grid</c>.</summary>
    public string Channel { get; init; } = "";

    /// <summary>
    /// The account to sign in to by SASL with the password. Where it is empty, a password is the server's own (<c>PASS</c>).
    /// </summary>
    public string Account { get; init; } = "";

    /// <summary>How long one line costs, in seconds, 0.01 to 60; 2 by default.</summary>
    public double SecondsPerMessage { get; init; } = 2;

    /// <summary>How many lines may go at once after a rest, 1 to 100; 5 by default.</summary>
    public int Burst { get; init; } = 5;

    /// <summary>Whether there is a chat.</summary>
    public bool IsOn => Server.Length > 0;

    /// <summary>Whether the server is on this machine, which no other can listen to.</summary>
    public bool IsLoopback => Server == "localhost" || (IPAddress.TryParse(Server, out var address) && IPAddress.IsLoopback(address));

    /// <summary>Every reason why these settings cannot be used, each with the way out.</summary>
    public IEnumerable<string> Faults()
    {
        if (!IsOn)
            yield break;
        if (Port is < 1 or > 65535)
            yield return $"chat.irc.port is a number from 1 to 65535 and not {Port}: change it.";
        if (!IsWord(Nick) || char.IsAsciiDigit(Nick[0]) || Nick.AsSpan().IndexOfAny("!@#.") >= 0)
            yield return "chat.irc.nick is one word that begins with a letter: change it.";
        if (!IsWord(Channel) || Channel[0] is not ('#' or '&') || Channel.Contains(',', StringComparison.Ordinal))
            yield return "chat.irc.channel is one word such as #grid: change it.";
        if (SecondsPerMessage is not (>= 0.01 and <= 60))
            yield return "chat.irc.secondsPerMessage is 0.01 to 60: change it.";
        if (Burst is < 1 or > 100)
            yield return "chat.irc.burst is 1 to 100: change it.";
    }

    /// <summary>The settings as they hold for a data folder.</summary>
    /// <param name="folder">Where paths begin that are not absolute.</param>
    /// <exception cref="PlainException">There is no such certificate.</exception>
    public IrcSettings In(DataFolder folder)
    {
        if (!IsOn || Certificate.Length == 0)
            return this;
        var path = Path.Combine(folder.Path, Certificate);
        return File.Exists(path) ? this with { Certificate = path } : throw new PlainException(
            $"There is no certificate {path}: correct chat.irc.certificate, or leave it empty for the ones that the system trusts.");
    }

    private static bool IsWord(string text) =>
        text.Length is > 0 and <= 50 && text.All(letter => letter > ' ' && !char.IsControl(letter)) && text[0] != ':';
}
