namespace Companion.Server.Chat;

/// <summary>A way out to a chat.</summary>
public interface IChat
{
    /// <summary>Says something when its turn comes; drops it where the chat is away or too much is waiting. Never waits.</summary>
    /// <param name="text">What to say.</param>
    void Say(string text);
}
