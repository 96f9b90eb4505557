namespace Companion.Server.Access;

/// <summary>What programs that are no browser call. Each request there proves by itself who sent it.</summary>
internal static class ToolPaths
{
    /// <summary>Where a chat's messages come in.</summary>
    public const string ChatMessages = "/chat/messages";
}
