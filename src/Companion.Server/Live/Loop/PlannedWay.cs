using Companion.Server.Planning;
using Companion.Session.Planning;

namespace Companion.Server.Live.Loop;

/// <summary>The way on, and how it is written down.</summary>
/// <param name="Way">The way on.</param>
/// <param name="Sheet">The run sheet; null where there is no way.</param>
internal sealed record PlannedWay(WayAhead Way, RunSheet? Sheet);
