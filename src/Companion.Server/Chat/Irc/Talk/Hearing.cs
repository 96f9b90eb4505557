using System.Globalization;
using Companion.Server.Chat.Irc.Lines;

namespace Companion.Server.Chat.Irc.Talk;

/// <summary>
/// What is written in the channel, as lines to be heard. A <c>NOTICE</c> is never one, since programs answer with it, nor is what
/// programs ask each other between bytes 01, nor our own echo.
/// </summary>
/// <param name="membership">Who and where we are.</param>
/// <param name="traits">How names fold.</param>
/// <param name="clock">The clock.</param>
internal sealed class Hearing(Membership membership, ServerTraits traits, TimeProvider clock)
{
    private const string Source = "irc";

    /// <summary>Reads a line.</summary>
    /// <param name="message">The line.</param>
    /// <returns>What somebody wrote, or null.</returns>
    public ChatLine? Take(IrcMessage message)
    {
        if (message is not { Command: "PRIVMSG", Source: { } writer } || message.Parameters.Length < 2 || message.Last.StartsWith('\x01'))
            return null;
        if (!membership.IsHere(message[0]) || membership.IsOurs(message))
            return null;
        return new(Source, UserId(message, writer), ChatText.Plain(writer.Nick), ChatText.Plain(message.Last), clock.GetUtcNow())
        {
            MessageId = message.Tags.GetValueOrDefault("msgid") is { Length: > 0 } id ? id : null,
            SentAt = Time(message.Tags.GetValueOrDefault("time")),
            IsFromBot = message.Tags.Keys.Any(key => key == "bot" || key.EndsWith("/bot", StringComparison.Ordinal)),
        };
    }

    // An account cannot be taken over by taking a nick; the two never look alike.
    private string UserId(IrcMessage message, IrcSource writer) =>
        message.Tags.GetValueOrDefault("account") is { Length: > 0 } account
            ? $"account {traits.Casemapping.Fold(account)}"
            : $"nick {traits.Casemapping.Fold(writer.Nick)}";

    // A leap second, 23:59:60, is a time that servers may send and no calendar here has.
    private static DateTimeOffset? Time(string? text) => DateTimeOffset.TryParse(
        text?.Replace(":60.", ":59.", StringComparison.Ordinal),
        CultureInfo.InvariantCulture,
        DateTimeStyles.AssumeUniversal | DateTimeStyles.AdjustToUniversal,
        out var time) ? time : null;
}
