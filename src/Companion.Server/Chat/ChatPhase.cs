namespace Companion.Server.Chat;

/// <summary>How a chat is doing.</summary>
public enum ChatPhase
{
    /// <summary>On its way, for the first time or again.</summary>
    Connecting,

    /// <summary>There, hearing and speaking.</summary>
    Connected,

    /// <summary>Given up, until the presenter has put something right.</summary>
    Stopped,
}
