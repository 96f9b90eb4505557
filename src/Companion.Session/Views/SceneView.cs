using Companion.Session.State;

namespace Companion.Session.Views;

/// <summary>A scene of the broadcast with the board's place in its picture.</summary>
/// <param name="Name">The scene's name.</param>
/// <param name="Frame">The board's place.</param>
public sealed record SceneView(string Name, Frame Frame);
