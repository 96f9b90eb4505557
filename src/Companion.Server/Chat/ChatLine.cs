namespace Companion.Server.Chat;

/// <summary>One line that somebody wrote in a chat. Who wrote it is kept in memory alone: a line never prints itself.</summary>
/// <param name="Source">By which way it came, such as <c>irc</c>.</param>
/// <param name="UserId">
/// Who wrote it, for telling viewers apart: the account where the chat vouches for one, else the name as the chat folds it. Never
/// shown, and the same person may have another one tomorrow.
/// </param>
/// <param name="DisplayName">The name to call them by, plain.</param>
/// <param name="Text">What they wrote, plain: no formatting, no control characters.</param>
/// <param name="ReceivedAt">When it came, by our clock.</param>
public sealed record ChatLine(string Source, string UserId, string DisplayName, string Text, DateTimeOffset ReceivedAt)
{
    /// <summary>The chat's own name of the line, or null; a line that comes twice has the same.</summary>
    public string? MessageId { get; init; }

    /// <summary>When the chat's server took it, by its clock, or null.</summary>
    public DateTimeOffset? SentAt { get; init; }

    /// <summary>Whether the chat says that a program wrote it.</summary>
    public bool IsFromBot { get; init; }

    /// <summary>Says that it is a line, not which.</summary>
    public override string ToString() => "(a line of the chat)";
}
