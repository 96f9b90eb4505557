using System.Text;
using Companion.Server.Chat.Irc.Lines;

namespace Companion.Server.Chat.Irc.SignIn;

/// <summary>Signing in by name and password. Sources: RFC 4616, IRCv3 SASL.</summary>
internal static class SaslPlain
{
    // Longer answers go in pieces of so many; a last piece that is full is followed by an empty one.
    private const int Piece = 400;

    /// <summary>The lines that carry name and password.</summary>
    /// <param name="account">The account, for which and as which we sign in.</param>
    /// <param name="password">Its password.</param>
    public static IEnumerable<IrcMessage> Answer(string account, Secret password)
    {
        var text = Convert.ToBase64String(Encoding.UTF8.GetBytes($"{account}\0{account}\0{password.Reveal()}"));
        for (var at = 0; at <= text.Length; at += Piece)
        {
            var piece = text.Substring(at, Math.Min(Piece, text.Length - at));
            yield return IrcMessage.Of("AUTHENTICATE", piece.Length > 0 ? piece : "+");
        }
    }
}
