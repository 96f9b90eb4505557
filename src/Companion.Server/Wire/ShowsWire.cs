using System.Collections.Immutable;
using Companion.Server.Shows;

namespace Companion.Server.Wire;

/// <summary>The shows that are kept.</summary>
/// <param name="Shows">By their numbers.</param>
public sealed record ShowsWire(ImmutableArray<ShowLine> Shows);
