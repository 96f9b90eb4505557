namespace Companion.Server.Chat.Irc;

/// <summary>Why the chat is not there, each with the way out. None repeats what a server said, which may name viewers or addresses.</summary>
internal static class Reasons
{
    /// <summary>Account and password were refused.</summary>
    public const string WrongAccount = "The server did not take the account and its password: correct them and start the companion again.";

    /// <summary>The server's own password was refused.</summary>
    public const string WrongPassword = "The server did not take the password: correct it and start the companion again.";

    /// <summary>There is no SASL PLAIN.</summary>
    public const string NoSignIn = "The server has no accounts to sign in to: empty chat.irc.account and start the companion again.";

    /// <summary>SASL is not offered now.</summary>
    public const string SignInAway = "The server takes no accounts now.";

    /// <summary>SASL was broken off.</summary>
    public const string SignInBroken = "Signing in was broken off.";

    /// <summary>The server refuses us.</summary>
    public const string BannedFromServer = "The server has banned this address: ask its operators.";

    /// <summary>The nick is not allowed.</summary>
    public const string BadNick = "The server does not allow the nick: choose another in chat.irc.nick and start the companion again.";

    /// <summary>Ten nicks are taken.</summary>
    public const string NicksTaken = "The nick and all like it are taken.";

    /// <summary>The channel refuses us for good.</summary>
    public const string NotAllowedIn = "The channel does not let the companion in: ask its moderators, then start the companion again.";

    /// <summary>There can be no such channel.</summary>
    public const string NoSuchChannel = "The server has no such channel: correct chat.irc.channel and start the companion again.";

    /// <summary>The certificate is not trusted.</summary>
    public const string BadCertificate =
        "The server's certificate is not trusted: correct chat.irc.server, or name the certificate in chat.irc.certificate.";

    /// <summary>Nobody answers.</summary>
    public const string Unreachable = "The server cannot be reached.";

    /// <summary>The line is silent.</summary>
    public const string Silent = "The server does not answer.";

    /// <summary>The connection was closed.</summary>
    public const string Closed = "The connection was lost.";
}
