namespace Companion.Benchmarks.Load;

/// <summary>How long entries took, in milliseconds, in ascending order.</summary>
/// <param name="ToPanel">To the presenter's panel.</param>
/// <param name="ToOverlay">To the overlay.</param>
internal sealed record EntryTimes(double[] ToPanel, double[] ToOverlay);
