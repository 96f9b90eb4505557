using System.Collections.Immutable;
using Companion.Session.Scanning;
using Companion.Session.State;
using Companion.Session.Views;

namespace Companion.Session.Watch;

/// <summary>All that the companion warns the presenter of, most urgent first.</summary>
public static class Warnings
{
    /// <summary>The warnings about a state. All but those that need a scan are computed from the state alone.</summary>
    /// <param name="state">The state.</param>
    /// <param name="scan">The last finished scan of the same puzzle, or null. It may be of an older state.</param>
    public static ImmutableArray<WatchNote> Of(SessionState state, ScanResult? scan)
    {
        ArgumentNullException.ThrowIfNull(state);
        return [];
    }
}
