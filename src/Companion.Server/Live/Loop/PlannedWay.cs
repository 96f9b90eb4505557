using Companion.Server.Planning;
using Companion.Session.Planning;

namespace Companion.Server.Live.Loop;

/// <summary>The way on, and how it is written down.</summary>
/// <param name="Way">The way on.</param>
/// <param name="Sheet">The run sheet, which counts from 1 and from 0:00; null where there is no way.</param>
/// <param name="Entries">How many entries had been made when it was planned.</param>
internal sealed record PlannedWay(WayAhead Way, RunSheet? Sheet, int Entries);
