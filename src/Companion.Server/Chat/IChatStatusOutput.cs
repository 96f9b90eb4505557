namespace Companion.Server.Chat;

/// <summary>Where the presenter sees how the chat is doing.</summary>
internal interface IChatStatusOutput
{
    /// <summary>Shows the newest status.</summary>
    /// <param name="status">The status.</param>
    ValueTask Show(ChatStatus status);
}
