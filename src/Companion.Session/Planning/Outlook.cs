using System.Collections.Immutable;
using Companion.Engine;
using Companion.Engine.Planning;
using Companion.Engine.Proofs;
using Companion.Engine.Rules;
using Companion.Session.State;

namespace Companion.Session.Planning;

/// <summary>
/// What is to be expected of the featured rules from the known board of a state. Derived, never stored: a replayed session is looked
/// at anew.
/// </summary>
/// <param name="Sequence">Number of the state that it looks ahead from.</param>
/// <param name="Loading">The loading of the puzzle that it belongs to; see <see cref="Grid.Loading"/>.</param>
/// <param name="Blocked">Why nothing can be expected, in one plain sentence, or null.</param>
/// <param name="Prospects">The featured rules in order; none where it is blocked.</param>
public sealed record Outlook(long Sequence, int Loading, string? Blocked, ImmutableArray<Prospect> Prospects)
{
    // So few easier steps are worth a word to the presenter.
    private const int Few = 2;

    private OutlookTrail Trail { get; init; } = OutlookTrail.Empty;

    /// <summary>Looks ahead. Slow; runs beside the session's loop and is cancelled by the next entry.</summary>
    /// <param name="state">The state.</param>
    /// <param name="whole">The whole ladder; what the presenter cut from it is left out.</param>
    /// <param name="previous">The last outlook, from which is known what was to be expected before; null at the start.</param>
    /// <param name="cancel">Stops it.</param>
    /// <exception cref="OperationCanceledException"><paramref name="cancel"/> was signalled.</exception>
    public static Outlook Of(SessionState state, Ladder whole, Outlook? previous, CancellationToken cancel = default)
    {
        ArgumentNullException.ThrowIfNull(state);
        var (known, blocked) = AheadFrom.Of(state);
        var trail = (previous?.Loading == state.Grid.Loading ? previous.Trail : OutlookTrail.Empty).StandingIn(state);
        if (known is null)
            return new(state.Sequence, state.Grid.Loading, blocked, []) { Trail = trail };

        var puzzle = state.Grid.Puzzle!;
        var cut = state.LadderCut.Of(whole, hasOneSolution: true);
        var waiting = WayAhead.Waiting(state).Select(feature => feature.Rule).ToHashSet();
        var ways = new Ways(puzzle.Solution, cut, cancel);
        var prospects = ImmutableArray.CreateBuilder<Prospect>();
        foreach (var rule in state.Plan.Featured.Select(feature => feature.Rule))
        {
            if (!waiting.Contains(rule) || !cut.Has(rule))
            {
                prospects.Add(new(rule, cut.Has(rule) ? Coming.Shown : Coming.Off, null, OutlookTrail.EntryOf(state), false));
                continue;
            }

            if (!trail.Has(rule))
                trail = trail.With(rule, OutlookTrail.StartOf(state), ways.Look(puzzle.Board, rule).Coming);
            var (coming, forecast) = ways.Look(known, rule);
            trail = trail.With(rule, OutlookTrail.EntryOf(state), coming);
            prospects.Add(new(rule, coming, forecast, trail.SinceOf(rule), coming == Coming.Never && trail.Came(rule)));
        }

        return new(state.Sequence, state.Grid.Loading, null, prospects.ToImmutable()) { Trail = trail };
    }

    // The way on from a board is found once for all rules.
    private sealed class Ways(Solution solution, Ladder ladder, CancellationToken cancel)
    {
        private readonly Dictionary<Board, Route> _routes = [];

        public (Coming Coming, Forecast Forecast) Look(Board board, RuleId rule)
        {
            var forecast = Forecast.Of(board, solution, ladder, rule, cancel);
            var coming = (forecast.First, forecast.Before.Length) switch
            {
                (null, _) => WayFrom(board).Rounds.Any(round => ladder[rule].IsOpenOn(round.Board, cancel)) ? Coming.Late : Coming.Never,
                (_, 0) => Coming.Open,
                (_, <= Few) => Coming.Near,
                _ => Coming.Ahead,
            };
            return (coming, forecast);
        }

        private Route WayFrom(Board board)
        {
            if (!_routes.TryGetValue(board, out var route))
                _routes[board] = route = Route.From(board, ladder, cancel);
            return route;
        }
    }
}
