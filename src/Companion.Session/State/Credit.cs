namespace Companion.Session.State;

/// <summary>What a puzzle is called and whom it is owed to. Each is empty where unknown.</summary>
/// <param name="Title">The title.</param>
/// <param name="Setter">Who set it, as it should be credited.</param>
/// <param name="Link">Where it is published; an http or https address, or empty.</param>
public sealed record Credit(string Title, string Setter, string Link);
