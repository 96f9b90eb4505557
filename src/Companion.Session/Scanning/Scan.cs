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
        var trail = previous is null ? Trail.Empty : Trail.Of(state, previous);
        var seen = SeenBoard.Of(state.Grid, state.Writing);
        var known = KnownBoard.Of(state);
        return new()
        {
            Sequence = state.Sequence,
            Loading = state.Grid.Loading,
            Entries = state.Entries,
            Blocked = state.Grid.Puzzle is null ? "Load a puzzle first." : WhyBlocked(known),
            Known = known.Value,
            Open = state.Grid.Puzzle is not null && seen.IsGood && known.IsGood
                ? Find(state, seen.Value, known.Value, ladder, previous, cancel)
                : [],
            Trail = trail,
        };
    }

    private static string? WhyBlocked(Reading<Board> known) => known.IsGood ? null : known.Faults[0].Sentence;

    private static ImmutableArray<Found> Find(
        SessionState state, Board seen, Board known, Ladder ladder, ScanResult? previous, CancellationToken cancel)
    {
        var taken = KnownBoard.Taken(state.Grid, seen, state.Used).ToList();
        var since = new Dictionary<Deduction, int>();
        foreach (var found in previous?.Open ?? [])
            since[found.Deduction] = found.OpenSince;
        return [.. ladder.Scan(known, cancel).Select(deduction =>
        {
            var unseen = deduction.RestsOn & seen.Candidates;
            var first = unseen.IsEmpty ? null : taken.First(step => !(step.Gone & unseen).IsEmpty).Used.Deduction;
            return new Found(
                deduction, ladder.RungOf(deduction.Rule), unseen, first, since.GetValueOrDefault(deduction, state.Entries));
        })];
    }
}
