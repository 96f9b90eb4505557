using System.Text.Json;

namespace Companion.Server.Chat.Webhook;

/// <summary>A chat's message, as it comes in.</summary>
/// <param name="Id">The chat's name of it, or null; one that comes twice is heard once.</param>
/// <param name="UserId">Who wrote it, as the chat tells its users apart.</param>
/// <param name="Name">The name to call them by, or null.</param>
/// <param name="Text">What they wrote.</param>
/// <param name="Bot">Whether a program wrote it.</param>
internal sealed record WebhookMessage(string? Id, string? UserId, string? Name, string? Text, bool Bot)
{
    private const int LongestName = 128;
    private const int LongestText = 500;

    /// <summary>Reads a message.</summary>
    /// <param name="body">The body of the request.</param>
    /// <returns>The message, or null where it is none.</returns>
    public static WebhookMessage? Read(ReadOnlySpan<byte> body)
    {
        try
        {
            var message = JsonSerializer.Deserialize<WebhookMessage>(body, JsonSerializerOptions.Web);
            return message is { UserId.Length: > 0 and <= LongestName, Text.Length: <= LongestText }
                and { Id: null or { Length: <= LongestName }, Name: null or { Length: <= LongestName } } ? message : null;
        }
        catch (JsonException)
        {
            return null;
        }
    }

    /// <summary>The message as a line to be heard.</summary>
    /// <param name="now">The time.</param>
    public ChatLine ToLine(DateTimeOffset now) => new(
        "webhook", $"user {UserId}", ChatText.Plain(Name is { Length: > 0 } ? Name : UserId!), ChatText.Plain(Text!), now)
    {
        MessageId = Id,
        IsFromBot = Bot,
    };
}
