using Companion.Server.Chat.Irc;
using Companion.Server.Chat.Webhook;

namespace Companion.Server.Chat;

/// <summary>The ways in and out of chats; all are closed by default.</summary>
internal sealed record ChatSettings
{
    /// <summary>The chat over IRC.</summary>
    public IrcSettings Irc { get; init; } = new();

    /// <summary>The way in over HTTP.</summary>
    public WebhookSettings Webhook { get; init; } = new();

    /// <summary>Every reason why these settings cannot be used, each with the way out.</summary>
    public IEnumerable<string> Faults() => Irc.Faults().Concat(Webhook.Faults());
}
