using Companion.Server.Chat.Irc.Lines;

namespace Companion.Server.Chat.Irc.SignIn;

/// <summary>From the first line to the server's welcome: capabilities, account, and a nick that is free.</summary>
/// <param name="settings">Nick and account.</param>
/// <param name="password">The password, or null.</param>
internal sealed class Registration(IrcSettings settings, Secret? password)
{
    // "Erroneous" and "too long" aside, a nick that is taken is tried with another digit at its end.
    private const int MostNicks = 10;

    // All servers take nicks of 9 letters (RFC 2812 section 1.2.1), so a digit replaces the ninth.
    private const int Stem = 8;

    private readonly bool _wantsSasl = settings.Account.Length > 0 && password is not null;
    private bool _isNegotiated;
    private bool _isSignedIn;
    private int _nicks = 1;

    /// <summary>What the server can do.</summary>
    public Capabilities Capabilities { get; } = new(settings.Account.Length > 0 && password is not null);

    /// <summary>The lines that begin it.</summary>
    public IEnumerable<IrcMessage> Begin()
    {
        yield return IrcMessage.Of("CAP", "LS", "302");
        if (password is not null && !_wantsSasl)
            yield return IrcMessage.Of("PASS", password.Reveal());
        yield return IrcMessage.Of("NICK", settings.Nick);
        yield return IrcMessage.Of("USER", settings.Nick, "0", "*", "A companion for this broadcast");
    }

    /// <summary>Takes a line.</summary>
    /// <param name="message">The line.</param>
    /// <returns>What it leads to; <see cref="IrcStep.SignedIn"/> at the end.</returns>
    public IEnumerable<IrcStep> Take(IrcMessage message) => message.Command switch
    {
        "CAP" => Negotiate(message),
        "AUTHENTICATE" when message.Last == "+" && _wantsSasl => Sends(SaslPlain.Answer(settings.Account, password!)),
        "903" or "907" => SignedIn(),
        "902" or "904" or "905" => Ends(Reasons.WrongAccount, true),
        "906" => Ends(Reasons.SignInBroken, false),
        "464" => Ends(Reasons.WrongPassword, true),
        // Some servers say only this of a wrong password.
        "ERROR" when password is not null && message.Last.Contains("password", StringComparison.OrdinalIgnoreCase) =>
            Ends(Reasons.WrongPassword, true),
        "ERROR" => Ends(Reasons.Closed, false),
        "465" or "466" => Ends(Reasons.BannedFromServer, true),
        "432" => Ends(Reasons.BadNick, true),
        "433" or "436" or "437" => NextNick(),
        "001" when _wantsSasl && !_isSignedIn => Ends(Reasons.NoSignIn, true),
        "001" => [new IrcStep.SignedIn()],
        _ => [],
    };

    private static IEnumerable<IrcStep> Sends(IEnumerable<IrcMessage> messages) => messages.Select(message => new IrcStep.Send(message));

    private static IEnumerable<IrcStep> Sends(params string[] words) => [new IrcStep.Send(IrcMessage.Of(words[0], words.AsSpan(1)))];

    private static IEnumerable<IrcStep> Ends(string reason, bool isFinal) => [new IrcStep.End(reason, isFinal)];

    private IEnumerable<IrcStep> Negotiate(IrcMessage message)
    {
        List<IrcStep> steps = [.. Sends(Capabilities.Take(message))];
        if (_isNegotiated || !Capabilities.AreSettled)
            return steps;
        _isNegotiated = true;
        if (!_wantsSasl)
            return [.. steps, .. Sends("CAP", "END")];
        if (Capabilities.Has(Capabilities.Sasl))
            return [.. steps, .. Sends("AUTHENTICATE", "PLAIN")];
        // Some servers take the offer back while their accounts are down: worth coming again, never worth going on without.
        return Capabilities.RefusesPlain ? Ends(Reasons.NoSignIn, true) : Ends(Reasons.SignInAway, false);
    }

    private IEnumerable<IrcStep> SignedIn()
    {
        _isSignedIn = true;
        return Sends("CAP", "END");
    }

    private IEnumerable<IrcStep> NextNick()
    {
        if (_nicks == MostNicks)
            return Ends(Reasons.NicksTaken, false);
        return Sends("NICK", $"{settings.Nick[..Math.Min(Stem, settings.Nick.Length)]}{_nicks++}");
    }
}
