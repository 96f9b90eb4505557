using Companion.Engine.Rules;

namespace Companion.Engine.Proofs;

/// <summary>Plays the steps of a proof on the board itself: finds them there as the rules find them, and drops those that can go.</summary>
/// <param name="start">The board.</param>
/// <param name="target">What is to come about.</param>
/// <param name="rules">The rules up to the hardest that may be used, easiest first.</param>
/// <param name="cancel">Stops between two rules.</param>
internal sealed class AttributionReplay(
    Board start, AttributionTarget target, IReadOnlyList<IRule> rules, CancellationToken cancel)
{
    /// <summary>
    /// The steps as they are open on the board after the steps before them. More stands there than where they were found, so that
    /// an easier rule may do, and a step may conclude more. Where a step is lost because another came before it, the easiest steps
    /// are taken until its place is made good.
    /// </summary>
    /// <param name="steps">The steps, each with what is needed of it.</param>
    /// <returns>The deductions in order; null where they do not lead to the target.</returns>
    internal List<Deduction>? Play(IEnumerable<(AttributionArc Arc, AttributionTarget Use)> steps)
    {
        var (board, played) = (start, new List<Deduction>());
        foreach (var (arc, use) in steps)
        {
            if (!use.IsReachedOn(board))
                Go(Find(board, use, arc.Deduction), use);
        }

        Go(null, target);
        return target.IsReachedOn(board) ? played : null;

        void Go(Deduction? first, AttributionTarget to)
        {
            while (!to.IsReachedOn(board) && (first ?? Easiest(board)) is { } next)
            {
                played.Add(next);
                board = board.Apply(next);
                first = null;
            }
        }
    }

    /// <summary>
    /// Drops every step without which the others still hold. Goes from the last to the first: a step that is kept is not made
    /// needless by dropping one before it.
    /// </summary>
    internal void Drop(List<Deduction> steps)
    {
        for (var index = steps.Count - 1; index >= 0; index--)
        {
            var step = steps[index];
            steps.RemoveAt(index);
            if (!Hold(steps))
                steps.Insert(index, step);
        }
    }

    /// <summary>The arcs of steps that are open one after the other.</summary>
    internal List<AttributionArc> ArcsOf(IEnumerable<Deduction> steps, Func<RuleId, double> costOf)
    {
        var (board, arcs) = (start, new List<AttributionArc>());
        foreach (var step in steps)
        {
            arcs.Add(AttributionArc.Of(start, board, step, costOf(step.Rule)));
            board = board.Apply(step);
        }

        return arcs;
    }

    private bool Hold(List<Deduction> steps)
    {
        var board = start;
        foreach (var step in steps)
        {
            cancel.ThrowIfCancellationRequested();
            if (!ProofChecker.Holds(board, step))
                return false;
            board = board.Apply(step);
        }

        return target.IsReachedOn(board);
    }

    // The same pattern where it is open, else the first of the easiest rule that gives what is needed, else the step as it was found.
    private Deduction? Find(Board board, AttributionTarget use, Deduction step)
    {
        foreach (var rule in rules)
        {
            cancel.ThrowIfCancellationRequested();
            var found = new Findings();
            rule.Find(board, found);
            var fitting = found.Where(deduction => Gives(board, deduction, use)).ToList();
            if (fitting.Count > 0)
                return fitting.Find(deduction => deduction.PatternCells == step.PatternCells) ?? fitting[0];
        }

        return ProofChecker.Holds(board, step) && Gives(board, step, use) ? step : null;
    }

    private Deduction? Easiest(Board board)
    {
        var found = new Findings(limit: 1);
        foreach (var rule in rules)
        {
            cancel.ThrowIfCancellationRequested();
            rule.Find(board, found);
            if (found.IsFull)
                return found[0];
        }

        return null;
    }

    internal static bool Gives(Board board, Deduction deduction, AttributionTarget use) =>
        (deduction.Places.IsEmpty || board.Candidates.ContainsAll(deduction.Places)) && use.IsReachedOn(board.Apply(deduction));
}
