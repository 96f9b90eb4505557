using System.Collections.Immutable;
using Companion.Engine.Proofs;
using Companion.Engine.Rules;

namespace Companion.Engine.Planning;

/// <summary>Whether a puzzle needs a rule, and how it can be gone round.</summary>
/// <param name="Rule">The rule.</param>
/// <param name="Need">Whether it is needed.</param>
/// <param name="Board">
/// The board on which it is first open because nothing easier is: where the easier rules stop, or later where it is
/// <see cref="Need.Late"/>. Null where it is <see cref="Need.Spare"/> or <see cref="Need.Never"/>.
/// </param>
/// <param name="Instead">
/// The rungs that lead to the solution without it, hardest first: from <paramref name="Board"/> where there is one, in which case the
/// first of them is harder where it is <see cref="Need.Needed"/>; else from the puzzle's start. Empty where no rule of the ladder
/// leads there without it.
/// </param>
public sealed record RuleNeed(RuleId Rule, Need Need, Board? Board, ImmutableArray<Rung> Instead)
{
    /// <summary>
    /// Where it is <see cref="Need.Never"/>: the first board of the route on which it is open beside something easier; null where there
    /// is none, or where it is a last resort, which is not looked for there.
    /// </summary>
    public Board? Beside { get; init; }

    /// <summary>Finds out whether a rule is needed.</summary>
    /// <param name="start">The puzzle's start; it has a solution.</param>
    /// <param name="ladder">The rules, the one in question among them.</param>
    /// <param name="rule">The rule in question.</param>
    /// <param name="cancel">Stops within a round.</param>
    /// <exception cref="ArgumentException">The rule is not on the ladder.</exception>
    /// <exception cref="OperationCanceledException"><paramref name="cancel"/> was signalled.</exception>
    public static RuleNeed Of(Board start, Ladder ladder, RuleId rule, CancellationToken cancel = default)
    {
        ArgumentNullException.ThrowIfNull(ladder);
        return Of(Route.From(start, ladder, cancel), rule, cancel);
    }

    /// <summary>Finds out whether a rule is needed on a puzzle whose route is known.</summary>
    /// <param name="route">The route from the puzzle's start with the rule in question among the rules.</param>
    /// <param name="rule">The rule in question.</param>
    /// <param name="cancel">Stops within a round.</param>
    /// <exception cref="ArgumentException">The rule is not on the ladder.</exception>
    /// <exception cref="OperationCanceledException"><paramref name="cancel"/> was signalled.</exception>
    public static RuleNeed Of(Route route, RuleId rule, CancellationToken cancel = default)
    {
        ArgumentNullException.ThrowIfNull(route);
        var ladder = route.Ladder;
        // The route goes by easier rules until it meets the first round of one that is not.
        var stop = route.Rounds.FirstOrDefault(round => round.Rung.Place >= ladder.RungOf(rule))?.Board ?? route.End;
        if (stop.IsFull)
            return new(rule, Need.Spare, null, route.Rungs);
        if (ladder[rule].IsOpenOn(stop, cancel))
            return new(rule, Need.Needed, stop, RoundIt(route, stop, rule, cancel));
        return route.Rounds.FirstOrDefault(round => round.Rung.Rule.Id == rule) is { } late
            ? new(rule, Need.Late, late.Board, RoundIt(route, late.Board, rule, cancel))
            : new(rule, Need.Never, null, route.IsComplete ? route.Rungs : []) { Beside = FirstBeside(route, rule, cancel) };
    }

    private static Board? FirstBeside(Route route, RuleId rule, CancellationToken cancel) =>
        route.Ladder[rule].Rule.Effort == Effort.LastResort
            ? null
            : route.Rounds.Select(round => round.Board).FirstOrDefault(board => route.Ladder[rule].IsOpenOn(board, cancel));

    private static ImmutableArray<Rung> RoundIt(Route route, Board from, RuleId rule, CancellationToken cancel) =>
        route.Without(from, rule, cancel) is { IsComplete: true } others ? others.Rungs : [];
}
