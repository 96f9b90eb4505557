namespace Companion.Server.Chat;

/// <summary>Where the presenter sees how the chat is doing.</summary>
internal interface IChatStatusOutput
{
    /// <summary>Shows the newest status. Never waits.</summary>
    /// <param name="status">The status.</param>
    void Show(ChatStatus status);
}
