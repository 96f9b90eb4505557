using System.Collections.Immutable;
using Companion.Engine;
using Companion.Engine.Proofs;
using Companion.Engine.Rules;
using Companion.Session.Boards;
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
        return (scanned.Entries, scanned.Loadings, scanned.Writing, scanned.Used)
            == (other.Entries, other.Loadings, other.Writing, other.Used);
    }

    /// <summary>Scans the known board of a state.</summary>
    /// <param name="state">The state.</param>
    /// <param name="ladder">The rules.</param>
    /// <param name="previous">The last finished scan, from which counts are carried on; null at the start.</param>
    /// <param name="cancel">Stops between two rules.</param>
    /// <exception cref="OperationCanceledException"><paramref name="cancel"/> was signalled.</exception>
    public static ScanResult Of(SessionState state, Ladder ladder, ScanResult? previous, CancellationToken cancel = default)
    {
        ArgumentNullException.ThrowIfNull(state);
        ArgumentNullException.ThrowIfNull(ladder);
        if (previous?.Loading != state.Grid.Loading)
            previous = null;
        var known = KnownBoard.Of(state);
        var blocked = WhyBlocked(state, known);
        var before = previous?.OpenSince ?? ImmutableDictionary<Deduction, int>.Empty;
        var open = blocked is null ? Find(state, known.Value!, ladder, before, cancel) : [];
        return new()
        {
            Sequence = state.Sequence,
            Loading = state.Grid.Loading,
            Entries = state.Entries,
            Blocked = blocked,
            Known = known.Value,
            Open = open,
            OpenSince = blocked is null ? SinceOf(open) : before,
            Trail = previous is null ? Trail.Empty : Trail.Of(state, previous),
            Dependents = Scanning.Dependents.Of(state, ladder, cancel),
        };
    }

    // A board that cannot be filled proves everything: nothing found on it would be worth saying.
    private static string? WhyBlocked(SessionState state, Reading<Board> known)
    {
        if (state.Grid.Puzzle is null)
            return "Load a puzzle first.";
        return known.IsGood ? Contradiction.On(known.Value).FirstOrDefault()?.Sentence : known.Faults[0].Sentence;
    }

    private static ImmutableArray<Found> Find(
        SessionState state, Board known, Ladder ladder, ImmutableDictionary<Deduction, int> before, CancellationToken cancel)
    {
        // The known board is the seen board less some candidates, so that a good one has a good seen board.
        var supportOf = Support.On(state, SeenBoard.Of(state.Grid, state.Writing).Value!);
        return [.. ladder.Scan(known, cancel).Select(deduction => new Found(
            deduction,
            ladder.RungOf(deduction.Rule),
            supportOf(deduction),
            before.GetValueOrDefault(deduction, state.Entries)))];
    }

    private static ImmutableDictionary<Deduction, int> SinceOf(ImmutableArray<Found> open)
    {
        var since = ImmutableDictionary.CreateBuilder<Deduction, int>();
        foreach (var found in open)
            since[found.Deduction] = found.OpenSince;
        return since.ToImmutable();
    }
}
