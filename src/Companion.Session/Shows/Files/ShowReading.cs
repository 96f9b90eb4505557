using System.Collections.Immutable;

namespace Companion.Session.Shows.Files;

/// <summary>What came of reading a show file.</summary>
/// <param name="File">What the file holds; null where it is none.</param>
/// <param name="Show">The show; null where there are faults.</param>
/// <param name="Missing">What is missing of a file that was cut off, in one plain sentence; null where it is whole.</param>
/// <param name="Faults">Why it cannot be used, each in one plain sentence.</param>
public sealed record ShowReading(ShowFile? File, StoredShow? Show, string? Missing, ImmutableArray<string> Faults)
{
    /// <summary>It cannot be used.</summary>
    internal static ShowReading Refused(params ReadOnlySpan<string> faults) => new(null, null, null, [.. faults]);
}
