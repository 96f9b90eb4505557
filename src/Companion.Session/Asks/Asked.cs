using Companion.Session.Asks.Viewers;

namespace Companion.Session.Asks;

/// <summary>One ask as it came in.</summary>
/// <param name="Way">The way it came, and by which it is answered.</param>
/// <param name="Viewer">Who asks.</param>
/// <param name="Name">The name by which the answer speaks to the viewer; anything, it is made fit to be shown.</param>
/// <param name="Ask">What is asked.</param>
/// <param name="At">When it came in.</param>
public sealed record Asked(Way Way, ViewerId Viewer, string Name, Ask Ask, DateTimeOffset At);
