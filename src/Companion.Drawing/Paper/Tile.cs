namespace Companion.Drawing.Paper;

/// <summary>A board in a grid of them.</summary>
/// <param name="Title">What stands over it, on one line.</param>
/// <param name="Figure">The board.</param>
/// <param name="Words">What stands below it; empty for nothing.</param>
public sealed record Tile(string Title, Figure Figure, string Words = "");
