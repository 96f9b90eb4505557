namespace Companion.Drawing.Paper;

/// <summary>One of the numbered steps of a list.</summary>
/// <param name="Text">What it says.</param>
/// <param name="Sign">A word in a frame before it; empty for none.</param>
/// <param name="Note">What somebody wants to say there; empty for nothing.</param>
/// <param name="Figure">A board below it, on the same page; null for none.</param>
public sealed record Step(string Text, string Sign = "", string Note = "", Figure? Figure = null);
