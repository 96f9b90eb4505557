using System.Collections.Immutable;
using Companion.Engine.Rules;

namespace Companion.Engine.Proofs;

/// <summary>The easiest proof of digits placed and candidates gone, or that the ladder has none.</summary>
/// <remarks>
/// <para>
/// The easiest proof is the one whose hardest rule is as low on the ladder as can be; among those the one whose steps cost least
/// together; among those the one with the fewest steps. Its steps stand in the order in which they are said: what leads to a step
/// just before it. What a placed digit eliminates needs no step of its own.
/// </para>
/// <para>
/// What is exact: each step is open on the board after the steps before it, as its rule finds it there, and none can be dropped. The
/// hardest rule is the lowest that can be, as long as no deduction is lost by taking another first; so it is for all rules but some
/// that assume one solution or end at a certain length. A proof of one step has the least cost there can be. What is approximate:
/// the least total cost of several steps, where steps may be shared, is a problem for which no quick way is known (it is NP-hard).
/// Here steps shared by two branches are counted in each while ways are compared, and only deductions are compared that came up when
/// the board was followed in two ways: the easiest first, and all at once. So a proof of several steps may now and then cost more
/// than the cheapest one would; the tests find that of a few in a hundred.
/// </para>
/// </remarks>
public abstract record Attribution
{
    private Attribution()
    {
    }

    /// <summary>Finds the easiest proof.</summary>
    /// <param name="board">The board before it: the seen board, or the start. It should be one that can be filled.</param>
    /// <param name="target">What is to be proved.</param>
    /// <param name="ladder">The rules with their costs.</param>
    /// <param name="most">Rules that take longer to look are not tried; by default the last resorts are not.</param>
    /// <param name="cancel">Stops between two rules.</param>
    /// <exception cref="OperationCanceledException"><paramref name="cancel"/> was signalled.</exception>
    public static Attribution Of(
        Board board,
        AttributionTarget target,
        Ladder ladder,
        Effort most = Effort.Search,
        CancellationToken cancel = default)
    {
        ArgumentNullException.ThrowIfNull(ladder);
        return Of(board, target, [.. ladder.Rules.Where(rule => rule.Effort <= most)], rule => ladder[rule].Cost, cancel);
    }

    /// <summary>The same with these rules, easiest first, and with costs above zero.</summary>
    internal static Attribution Of(
        Board board, AttributionTarget target, ImmutableArray<IRule> rules, Func<RuleId, double> costOf, CancellationToken cancel)
    {
        ArgumentNullException.ThrowIfNull(board);
        ArgumentNullException.ThrowIfNull(costOf);
        var climb = new AttributionClimb(board, target, rules, costOf, cancel);
        if (climb.ByTheEasiest() is not { } hardest)
            return new NotProved(rules.LastOrDefault()?.Id ?? default);
        if (hardest < 0)
            return new Proved([], default, 0, null);
        var atOnce = FindAtOnce(board, target, rules, cancel);
        if (atOnce?.Rule == rules[hardest].Id)
            return new Proved([atOnce], atOnce.Rule, costOf(atOnce.Rule), null);

        // A last resort takes too long to be looked at on board after board.
        if (rules[hardest].Effort < Effort.LastResort)
            climb.InRounds(hardest);
        var replay = new AttributionReplay(board, target, rules[..(hardest + 1)], cancel);
        return Easiest(climb.Arcs, replay, Rest(board, target), costOf) is { } steps
            ? new Proved([.. steps], HardestOf(steps, rules), steps.Sum(step => costOf(step.Rule)), atOnce)
            : new NotProved(rules[^1].Id);
    }

    private static RuleId HardestOf(List<Deduction> steps, ImmutableArray<IRule> rules) =>
        rules.Last(rule => steps.Exists(step => step.Rule == rule.Id)).Id;

    private static Deduction? FindAtOnce(
        Board board, AttributionTarget target, ImmutableArray<IRule> rules, CancellationToken cancel)
    {
        foreach (var rule in rules)
        {
            cancel.ThrowIfCancellationRequested();
            var found = new Findings();
            rule.Find(board, found);
            if (found.FirstOrDefault(deduction => AttributionReplay.Gives(board, deduction, target)) is { } only)
                return only;
        }

        return null;
    }

    // What of the target is not so from the start.
    private static AttributionTarget Rest(Board board, AttributionTarget target) => new(
        CandidateSet.Of([.. target.Places.Where(candidate => board.DigitAt(candidate.Cell) != candidate.Digit)]),
        target.Removes & board.Candidates);

    private static List<Deduction>? Easiest(
        List<AttributionArc> arcs, AttributionReplay replay, AttributionTarget rest, Func<RuleId, double> costOf)
    {
        var steps = Retell(arcs);
        for (var before = int.MaxValue; steps?.Count < before;)
        {
            before = steps.Count;
            replay.Drop(steps);

            // Without what was dropped more stands, and what is kept may conclude more, which may make yet others needless.
            if (steps.Count < before && Retell(replay.ArcsOf(steps, costOf)) is { } again && again.Count < before)
                steps = again;
        }

        return steps;

        List<Deduction>? Retell(List<AttributionArc> from) => replay.Play(AttributionPath.Find(from, rest) ?? []);
    }

    /// <summary>It follows.</summary>
    /// <param name="Steps">The deductions in order; none where it is so on the board already.</param>
    /// <param name="Hardest">The rule of the hardest step; the default where there is no step.</param>
    /// <param name="Cost">The sum of the steps' costs.</param>
    /// <param name="AtOnce">
    /// The easiest deduction open on the board that gives all of it by itself, where its rule is harder than any step of the proof
    /// (a naked single that comes about by some hidden singles as well); else null.
    /// </param>
    public sealed record Proved(ImmutableArray<Deduction> Steps, RuleId Hardest, double Cost, Deduction? AtOnce) : Attribution
    {
        /// <inheritdoc/>
        public bool Equals(Proved? other) =>
            other is not null && Steps.AsSpan().SequenceEqual(other.Steps.AsSpan())
            && (Hardest, Cost) == (other.Hardest, other.Cost) && Equals(AtOnce, other.AtOnce);

        /// <inheritdoc/>
        public override int GetHashCode() => HashCode.Combine(Steps.Length, Hardest, Cost, AtOnce);
    }

    /// <summary>The rules of the ladder do not prove it.</summary>
    /// <param name="UpTo">The last rule that was tried.</param>
    public sealed record NotProved(RuleId UpTo) : Attribution;
}
