using Companion.Engine.Rules;

namespace Companion.Engine.Proofs;

/// <summary>Follows the rules from a board to a target, and gathers everything found on the way.</summary>
/// <param name="start">The board.</param>
/// <param name="target">What is to come about.</param>
/// <param name="rules">The rules, easiest first.</param>
/// <param name="costOf">The cost of a rule's deductions.</param>
/// <param name="cancel">Stops between two rules.</param>
internal sealed class AttributionClimb(
    Board start, AttributionTarget target, IReadOnlyList<IRule> rules, Func<RuleId, double> costOf, CancellationToken cancel)
{
    /// <summary>Everything found so far.</summary>
    internal List<AttributionArc> Arcs { get; } = [];

    /// <summary>
    /// Takes all that the easiest rule finds that finds anything, again and again. A rule is tried only where all easier ones have
    /// nothing more to say, so that the hardest rule that was taken is one that the target cannot do without.
    /// </summary>
    /// <returns>The hardest rung taken, -1 where none was needed; null where the target is not reached.</returns>
    internal int? ByTheEasiest()
    {
        var (board, rung, hardest) = (start, 0, -1);
        while (!target.IsReachedOn(board))
        {
            if (rung == rules.Count)
                return null;
            var after = Take(board, rung, rung);
            hardest = after is null ? hardest : Math.Max(hardest, rung);
            (board, rung) = after is null ? (board, rung + 1) : (after, 0);
        }

        return hardest;
    }

    /// <summary>Takes all that all rules up to a rung find, round by round: what is open at first is found as it is at first.</summary>
    internal void InRounds(int hardest)
    {
        for (var board = start; !target.IsReachedOn(board);)
        {
            if (Take(board, 0, hardest) is not { } after)
                return;
            board = after;
        }
    }

    // The board with all that these rules find on it, or null where that is nothing new.
    private Board? Take(Board board, int from, int to)
    {
        var found = new Findings();
        for (var rung = from; rung <= to; rung++)
        {
            cancel.ThrowIfCancellationRequested();
            rules[rung].Find(board, found);
        }

        var after = board;
        foreach (var deduction in found)
        {
            Arcs.Add(AttributionArc.Of(start, board, deduction, costOf(deduction.Rule)));
            after = after.Remove(deduction.Removes);
        }

        // On a board that cannot be filled two deductions may fill one cell.
        foreach (var candidate in found.SelectMany(deduction => deduction.Places))
            after = after.Candidates.Contains(candidate) ? after.Place(candidate) : after;
        return after.Candidates == board.Candidates ? null : after;
    }
}
