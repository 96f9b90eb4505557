using System.Text;

namespace Companion.Server.Chat.Irc.Lines;

/// <summary>
/// How much fits into a line, in octets. A line has at most 512, CR LF included; what others receive carries our nick, user and host
/// in front, and is cut by the server where it is too long.
/// </summary>
internal static class LineBudget
{
    /// <summary>The most octets of a line without CR LF.</summary>
    public const int Line = 510;

    // The longest that servers commonly let a host be; a name in the domain name system has at most 63 to a label.
    private const int LongestHost = 63;

    /// <summary>What is left for the words of a message.</summary>
    /// <param name="self">Who says it; where user or host are not known yet, room for long ones is kept.</param>
    /// <param name="channel">Where.</param>
    public static int ForMessage(IrcSource self, string channel)
    {
        var user = self.User is { } known ? Octets(known) : 1 + Octets(self.Nick);
        var host = self.Host is { } name ? Octets(name) : LongestHost;
        return Line - Octets($":{self.Nick}!@ PRIVMSG {channel} :") - user - host;
    }

    /// <summary>The octets of a text.</summary>
    /// <param name="text">The text.</param>
    public static int Octets(string text) => Encoding.UTF8.GetByteCount(text);
}
