namespace Companion.Server.Chat;

/// <summary>How the chat is doing, for the presenter.</summary>
/// <param name="Phase">How.</param>
/// <param name="Text">The same in one plain sentence, with the way out where there is one. It carries no secret and no viewer's name.</param>
public sealed record ChatStatus(ChatPhase Phase, string Text);
