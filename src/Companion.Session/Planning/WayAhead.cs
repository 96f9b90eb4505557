using System.Collections.Immutable;
using Companion.Engine;
using Companion.Engine.Planning;
using Companion.Engine.Proofs;
using Companion.Engine.Rules;
using Companion.Session.Events;
using Companion.Session.Scanning;
using Companion.Session.State;

namespace Companion.Session.Planning;

/// <summary>The way on from the known board of a state, as it is planned.</summary>
/// <param name="Sequence">Number of the state that it goes on from.</param>
/// <param name="Loading">The loading of the puzzle that it belongs to; see <see cref="Grid.Loading"/>.</param>
/// <param name="Blocked">Why nothing can be planned, in one plain sentence, or null.</param>
/// <param name="Plan">The plan; null where nothing can be planned.</param>
public sealed record WayAhead(long Sequence, int Loading, string? Blocked, RunPlan? Plan)
{
    /// <summary>Plans the way on. Slow; runs beside the session's loop and is cancelled by the next entry.</summary>
    /// <param name="state">The state.</param>
    /// <param name="whole">The whole ladder; what the presenter cut from it is left out.</param>
    /// <param name="cancel">Stops it.</param>
    /// <exception cref="OperationCanceledException"><paramref name="cancel"/> was signalled.</exception>
    public static WayAhead Of(SessionState state, Ladder whole, CancellationToken cancel = default)
    {
        ArgumentNullException.ThrowIfNull(state);
        var (known, blocked) = AheadFrom.Of(state);
        if (known is null)
            return new(state.Sequence, state.Grid.Loading, blocked, null);

        var cut = state.LadderCut.Of(whole, hasOneSolution: true);
        var features = Waiting(state).Where(feature => cut.Has(feature.Rule));
        return new(state.Sequence, state.Grid.Loading, null, RunPlan.From(known, cut, features, LastOf(state), cancel));
    }

    /// <summary>Whether what was planned from one state holds for another too.</summary>
    /// <param name="planned">The state from which it was planned.</param>
    /// <param name="other">The other state of the same session.</param>
    public static bool HoldsFor(SessionState planned, SessionState other) =>
        Scan.HoldsFor(planned, other) && (planned == other || Waiting(planned).SequenceEqual(Waiting(other)));

    /// <summary>
    /// The featured rules that were not shown yet: none of their deductions was said, shown in full, used, or needed for an entry that
    /// stands.
    /// </summary>
    /// <param name="state">The state.</param>
    public static ImmutableArray<Feature> Waiting(SessionState state)
    {
        ArgumentNullException.ThrowIfNull(state);
        if (state.Plan.Featured.Count == 0)
            return [];
        var entries = state.History.Made.Where(step => step.Grid.Loading == state.Grid.Loading).Select(step => step.Number).ToHashSet();
        var shown = state.Used.Where(used => used.Loading == state.Grid.Loading).Select(used => used.Deduction)
            .Concat(state.Attributions.Where(proved => entries.Contains(proved.Entry))
                .SelectMany(proved => proved.Attribution is Attribution.Proved { Steps: var steps } ? steps : []))
            .Select(deduction => deduction.Rule).ToHashSet();
        return [.. state.Plan.Featured.Where(feature => !shown.Contains(feature.Rule))];
    }

    // A person goes on near the digit written last.
    private static Deduction? LastOf(SessionState state) => state.History.Last?.Entry is DigitPlaced placed
        ? new() { Rule = default, Cells = [], Digits = DigitSet.Of(placed.Digit), Places = CandidateSet.Of(new Candidate(placed.Cell, placed.Digit)) }
        : null;
}
