namespace Companion.Server.Chat.Webhook;

/// <summary>What a program is told whose message is not taken. Each says the way out, and none repeats what was sent.</summary>
internal static class Refusals
{
    /// <summary>There is no shared secret.</summary>
    public const string Closed = "This way into the companion is closed: set COMPANION_CHAT_SECRET and start it again.";

    /// <summary>The signature does not fit.</summary>
    public const string BadSignature =
        "The signature does not fit: Companion-Signature is the hexadecimal HMAC-SHA256 of Companion-Timestamp, a point and the body.";

    /// <summary>The time is too far from ours.</summary>
    public const string Stale = "The message is too old or from the future: Companion-Timestamp is the time now, in seconds since 1970.";

    /// <summary>The same request came before.</summary>
    public const string Repeated = "This very message came before: sign each message anew.";

    /// <summary>More came than is taken.</summary>
    public const string TooMany = "Too many messages came at once: send fewer.";

    /// <summary>The body is too long.</summary>
    public const string TooLong = "The message is too long: 4096 octets are the most.";

    /// <summary>The body is no message.</summary>
    public const string NotAMessage =
        """The body is a JSON object with "userId" and "text", and perhaps "id", "name" and "bot"; names have up to 128 characters and the text up to 500.""";
}
