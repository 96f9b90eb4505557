using System.Collections.Immutable;
using Companion.Engine.Proofs;
using Companion.Engine.Rules;

namespace Companion.Engine.Planning;

/// <summary>When a rule comes open, if the presenter goes on with easier ones.</summary>
/// <param name="Rule">The rule.</param>
/// <param name="First">The instance that comes open first; null where easier rules lead to none.</param>
/// <param name="Before">
/// The easier steps before it, none of which can be left out; empty where it is open now or never comes. There may be other ways
/// with fewer, but none with fewer than <paramref name="AtLeast"/>.
/// </param>
/// <param name="AtLeast">
/// How many easier steps there are before any instance, as far as that was proved by trying: 0 to the number of <paramref name="Before"/>.
/// A step is all that follows from one instance of an easier rule.
/// </param>
/// <param name="NearMisses">
/// Patterns of the rule that one false candidate is in the way of now, those whose candidate goes within <paramref name="Before"/>
/// first. Not looked for where the rule's effort is more than <see cref="Effort.Pattern"/>.
/// </param>
public sealed record Forecast(
    RuleId Rule, Deduction? First, ImmutableArray<Deduction> Before, int AtLeast, ImmutableArray<NearMiss> NearMisses)
{
    private const int MostInstances = 8;
    private const int MostNearMisses = 4;

    /// <summary>Whether the rule is open now.</summary>
    public bool IsOpen => First is not null && Before.IsEmpty;

    /// <summary>Whether it comes, and no way has fewer steps than <see cref="Before"/>.</summary>
    public bool IsExact => First is not null && AtLeast == Before.Length;

    /// <summary>The cells to watch: those of the pattern that comes first; empty where none does.</summary>
    public CellSet Watch => First?.PatternCells ?? CellSet.Empty;

    /// <summary>The forecast of a rule.</summary>
    /// <param name="board">The board now.</param>
    /// <param name="solution">The solution, which the board must not disagree with.</param>
    /// <param name="ladder">The rules, the one in question among them.</param>
    /// <param name="rule">The rule in question.</param>
    /// <param name="cancel">Stops it.</param>
    /// <exception cref="ArgumentException">The rule is not on the ladder.</exception>
    /// <exception cref="OperationCanceledException"><paramref name="cancel"/> was signalled.</exception>
    public static Forecast Of(Board board, Solution solution, Ladder ladder, RuleId rule, CancellationToken cancel = default)
    {
        ArgumentNullException.ThrowIfNull(board);
        ArgumentNullException.ThrowIfNull(solution);
        ArgumentNullException.ThrowIfNull(ladder);
        var (its, easier) = (ladder[rule], ladder.Below(rule));
        var (first, before) = Reach(board, its.Rule, easier, cancel);
        var atLeast = 0;
        if (!before.IsEmpty)
            (first, before, atLeast) = Shortened(board, its, easier, first!, before, cancel);
        return new(rule, first, before, atLeast, NearMissesOf(board, solution, its.Rule, before, cancel));
    }

    // Step by step by the easiest rule until this one finds something; of what it finds there, the instance that takes the fewest.
    private static (Deduction? First, ImmutableArray<Deduction> Before) Reach(Board now, IRule rule, Ladder easier, CancellationToken cancel)
    {
        var (board, steps) = (now, new List<Deduction>());
        while (true)
        {
            if (Find(board, rule, MostInstances, cancel) is { Count: > 0 } found)
            {
                return found.Select(instance => (Instance: instance, Steps: StepsTo(now, steps, instance)))
                    .MinBy(way => way.Steps.Length);
            }

            if (easier.Easiest(board, cancel) is not { } next)
                return (null, []);
            steps.Add(next);
            board = board.Apply(next);
        }
    }

    private static (Deduction First, ImmutableArray<Deduction> Before, int AtLeast) Shortened(
        Board now, Rung its, Ladder easier, Deduction first, ImmutableArray<Deduction> before, CancellationToken cancel)
    {
        // Of a step that was left without one before it a part may be enough, and a part is no step: of such ways nothing is proved.
        var most = AreWhole(now, before, easier, cancel) ? before.Length : before.Length - 1;
        var (shortest, atLeast) = new ShortestWay(its, easier, cancel).Below(now, before.Length);
        return shortest is null
            ? (first, before, Math.Clamp(most, 1, atLeast))
            : (Find(shortest.Board, its.Rule, most: 1, cancel)[0], shortest.Steps, atLeast);
    }

    // Whether each step is all that a rule finds there.
    private static bool AreWhole(Board board, ImmutableArray<Deduction> steps, Ladder easier, CancellationToken cancel)
    {
        foreach (var step in steps)
        {
            if (!Find(board, easier[step.Rule].Rule, int.MaxValue, cancel).Any(found => found.Places == step.Places && found.Removes == step.Removes))
                return false;
            board = board.Apply(step);
        }

        return true;
    }

    private static ImmutableArray<Deduction> StepsTo(Board now, List<Deduction> steps, Deduction instance) =>
        [.. Pruning.Needed(now, steps, _ => false, Pruning.IsProved, end => Pruning.IsProved(end, instance)).Select(place => steps[place])];

    private static ImmutableArray<NearMiss> NearMissesOf(
        Board board, Solution solution, IRule rule, ImmutableArray<Deduction> before, CancellationToken cancel)
    {
        if (rule.Effort != Effort.Pattern)
            return [];
        var goes = before.Aggregate(CandidateSet.Empty, (gone, step) => gone | step.Removes);
        return
        [
            .. board.Candidates.Where(candidate => !solution.Holds(candidate))
                .SelectMany(candidate => Find(board.Remove(CandidateSet.Of(candidate)), rule, int.MaxValue, cancel)
                    .Where(found => found.RestsOn.Contains(candidate)).Take(1)
                    .Select(found => new NearMiss(candidate, found)))
                .OrderByDescending(miss => goes.Contains(miss.InTheWay))
                .Take(MostNearMisses),
        ];
    }

    private static Findings Find(Board board, IRule rule, int most, CancellationToken cancel)
    {
        var found = new Findings(most, cancel);
        rule.Find(board, found);
        cancel.ThrowIfCancellationRequested();
        return found;
    }
}
