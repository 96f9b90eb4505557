namespace Companion.Server.Wire;

/// <summary>The answer to everything that a page asks for.</summary>
/// <param name="Refusal">Why not, in one plain sentence, or null where it was done.</param>
/// <param name="Sequence">The number of the state after it.</param>
public sealed record Reply(string? Refusal, long Sequence);
