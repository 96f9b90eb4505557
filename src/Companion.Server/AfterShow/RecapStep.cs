using Companion.Drawing.Paper;

namespace Companion.Server.AfterShow;

/// <summary>A step that a recap shows.</summary>
/// <param name="At">When it was told, by the clock of the video.</param>
/// <param name="Words">What it is called and why it holds.</param>
/// <param name="Figure">It on its board.</param>
internal sealed record RecapStep(string At, string Words, Figure Figure);
