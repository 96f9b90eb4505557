using Companion.Engine;

namespace Companion.Session.AfterShow.Recaps;

/// <summary>A wrong entry that stood on the grid.</summary>
/// <param name="At">When it was made, in the video.</param>
/// <param name="Candidate">The wrong digit, or the true candidate that was struck.</param>
/// <param name="IsStrike">Whether it was a strike.</param>
/// <param name="MendedAt">When it was taken back; null where it never was.</param>
public sealed record Slip(TimeSpan At, Candidate Candidate, bool IsStrike, TimeSpan? MendedAt);
