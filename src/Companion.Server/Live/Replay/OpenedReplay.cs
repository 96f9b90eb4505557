namespace Companion.Server.Live.Replay;

/// <summary>What comes of opening a show for replay.</summary>
/// <param name="Refusal">Why not, in one plain sentence, or null.</param>
/// <param name="Timeline">The show's timeline; null with a refusal.</param>
internal sealed record OpenedReplay(string? Refusal, Timeline? Timeline);
