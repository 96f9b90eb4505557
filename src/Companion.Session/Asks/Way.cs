namespace Companion.Session.Asks;

/// <summary>A way by which viewers ask and are answered.</summary>
/// <param name="Name">Its name, such as <c>irc #grid</c>.</param>
/// <param name="IsShared">
/// Whether all who ask by it read every answer, as in a chat: then equal questions are gathered and answered once, and answers
/// keep a distance. On a page each viewer reads only what was answered to them.
/// </param>
public sealed record Way(string Name, bool IsShared);
