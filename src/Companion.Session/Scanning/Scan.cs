using Companion.Engine.Rules;
using Companion.Session.State;

namespace Companion.Session.Scanning;

/// <summary>Finds what is open in a state. Pure; runs beside the session's loop and is cancelled by the next entry.</summary>
public static class Scan
{
    /// <summary>Whether a scan of one state holds for another too: nothing that a scan looks at differs.</summary>
    /// <param name="scanned">The state that was scanned.</param>
    /// <param name="other">The other state of the same session.</param>
    public static bool HoldsFor(SessionState scanned, SessionState other)
    {
        ArgumentNullException.ThrowIfNull(scanned);
        ArgumentNullException.ThrowIfNull(other);
        return (scanned.Show, scanned.Entries, scanned.Loadings, scanned.Writing, scanned.Used, scanned.LadderCut)
            == (other.Show, other.Entries, other.Loadings, other.Writing, other.Used, other.LadderCut);
    }

    /// <summary>Scans the known board of a state to the end.</summary>
    /// <param name="state">The state.</param>
    /// <param name="ladder">The whole ladder; what the presenter cut from it is left out.</param>
    /// <param name="previous">The last finished scan, from which counts are carried on; null at the start.</param>
    /// <param name="cancel">Stops between two rules.</param>
    /// <exception cref="OperationCanceledException"><paramref name="cancel"/> was signalled.</exception>
    public static ScanResult Of(SessionState state, Ladder ladder, ScanResult? previous, CancellationToken cancel = default) =>
        InParts(state, ladder, previous, cancel).Last();

    /// <summary>
    /// Scans the known board of a state part by part: what quick rules find is known at once, what slower ones find comes after it,
    /// and last resorts are only looked at where nothing else is open. Each result holds all that was found so far.
    /// </summary>
    /// <param name="state">The state.</param>
    /// <param name="ladder">The whole ladder; what the presenter cut from it is left out.</param>
    /// <param name="previous">
    /// The last result that went on to <see cref="Effort.Search"/> at least, from which counts are carried on; null at the start.
    /// </param>
    /// <param name="cancel">Stops between two rules.</param>
    /// <exception cref="OperationCanceledException"><paramref name="cancel"/> was signalled.</exception>
    public static IEnumerable<ScanResult> InParts(
        SessionState state, Ladder ladder, ScanResult? previous, CancellationToken cancel = default)
    {
        ArgumentNullException.ThrowIfNull(state);
        ArgumentNullException.ThrowIfNull(ladder);

        // A loaded puzzle has one solution: others are refused.
        var cut = state.LadderCut.Of(ladder, hasOneSolution: state.Grid.Puzzle is not null);
        return new Parts(state, cut, previous?.Loading == state.Grid.Loading ? previous : null, cancel).Scan();
    }
}
