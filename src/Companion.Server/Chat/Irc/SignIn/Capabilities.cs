using Companion.Server.Chat.Irc.Lines;

namespace Companion.Server.Chat.Irc.SignIn;

/// <summary>
/// What the server can do beyond the old protocol, and which of it is asked for. Each is asked for by itself, since a request is
/// granted or refused whole. Source: IRCv3, Capability Negotiation.
/// </summary>
/// <param name="wantsSasl">Whether there is an account to sign in to.</param>
internal sealed class Capabilities(bool wantsSasl)
{
    /// <summary>Signing in to an account.</summary>
    public const string Sasl = "sasl";

    private static readonly string[] Wanted = ["message-tags", "server-time", "account-tag", "echo-message"];

    private readonly Dictionary<string, string> _offered = [];
    private readonly HashSet<string> _waiting = [];
    private readonly HashSet<string> _granted = [];
    private bool _isListed;

    /// <summary>Whether the list came and every request was answered.</summary>
    public bool AreSettled => _isListed && _waiting.Count == 0;

    /// <summary>Whether the server granted this one.</summary>
    /// <param name="name">Its name.</param>
    public bool Has(string name) => _granted.Contains(name);

    /// <summary>Whether the server says that it signs in by other ways only.</summary>
    public bool RefusesPlain => _offered.GetValueOrDefault(Sasl) is { Length: > 0 } ways
        && !ways.Split(',').Contains("PLAIN", StringComparer.OrdinalIgnoreCase);

    /// <summary>Takes a <c>CAP</c> line: the list, a grant or a refusal, or news later on.</summary>
    /// <param name="message">The line.</param>
    /// <returns>The requests to send.</returns>
    public List<IrcMessage> Take(IrcMessage message)
    {
        var names = message.Last.Split(' ', StringSplitOptions.RemoveEmptyEntries);
        switch (message[1].ToUpperInvariant())
        {
            case "LS":
                Offer(names);
                // A star before the list says that more of it follows.
                _isListed = message[2] != "*" || message.Parameters.Length < 4;
                return _isListed ? Request(_offered.Keys) : [];
            case "NEW":
                Offer(names);
                return Request(names.Select(Name));
            case "ACK":
                _granted.UnionWith(names);
                _waiting.ExceptWith(names);
                return [];
            case "NAK":
                _waiting.ExceptWith(names);
                return [];
            case "DEL":
                _granted.ExceptWith(names);
                return [];
            default:
                return [];
        }
    }

    private static string Name(string offer) => offer.Split('=')[0];

    private void Offer(string[] names)
    {
        foreach (var offer in names)
            _offered[Name(offer)] = offer[Math.Min(offer.Length, Name(offer).Length + 1)..];
    }

    private List<IrcMessage> Request(IEnumerable<string> offered)
    {
        var asked = offered.Where(name => Wanted.Contains(name) || (name == Sasl && wantsSasl && !RefusesPlain))
            .Where(name => !_granted.Contains(name) && _waiting.Add(name)).ToList();
        return asked.ConvertAll(name => IrcMessage.Of("CAP", "REQ", name));
    }
}
