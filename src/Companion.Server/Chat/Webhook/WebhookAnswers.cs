using System.Collections.Immutable;

namespace Companion.Server.Chat.Webhook;

/// <summary>What is to be said.</summary>
/// <param name="InReplyTo">The message's id, where it answers one that had an id; else null.</param>
/// <param name="Answers">What to say, in order; may be empty.</param>
internal sealed record WebhookAnswers(string? InReplyTo, ImmutableArray<string> Answers);
