namespace Companion.Server.Wire;

/// <summary>A text that a page asked to save.</summary>
/// <param name="Name">What the file may be called.</param>
/// <param name="Text">All of it.</param>
public sealed record SavedFile(string Name, string Text);
