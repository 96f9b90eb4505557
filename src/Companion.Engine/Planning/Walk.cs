using Companion.Engine.Proofs;
using Companion.Engine.Rules;

namespace Companion.Engine.Planning;

/// <summary>
/// Walks from a board to the full grid one deduction after the other, as a person would: of the easiest rules that are open, near the
/// last entry.
/// </summary>
/// <param name="ladder">The rules.</param>
/// <param name="cancel">Stops it.</param>
internal sealed class Walk(Ladder ladder, CancellationToken cancel)
{
    /// <summary>The steps from a board on, each with the board before it.</summary>
    /// <param name="start">The board; it has a solution.</param>
    /// <param name="last">What was deduced before it, or null.</param>
    /// <param name="soon">Rules that are taken once, as soon as they are open.</param>
    internal List<WalkStep> From(Board start, Deduction? last, IEnumerable<RuleId> soon)
    {
        var steps = new List<WalkStep>();
        var waiting = soon.ToList();
        for (var board = start; !board.IsFull && Next(board, last, waiting) is var (rung, deduction); board = board.Apply(deduction))
        {
            steps.Add(new(board, rung, deduction));
            waiting.Remove(rung.Rule.Id);
            last = deduction;
        }

        return steps;
    }

    /// <summary>The instance of a rule that is best to show on a board: the one that takes most away, of equals the nearest.</summary>
    /// <returns>Null where the rule finds nothing.</returns>
    internal Deduction? Best(Board board, RuleId rule, Deduction? last)
    {
        var rung = ladder[rule];
        var near = new Nearness(last);
        return Find(board, rung).OrderByDescending(found => (found.Places | found.Removes).Count).ThenBy(found => near.CostOf(rung, found)).FirstOrDefault();
    }

    private (Rung Rung, Deduction Deduction)? Next(Board board, Deduction? last, List<RuleId> waiting)
    {
        foreach (var rule in waiting)
        {
            if (Best(board, rule, last) is { } turn)
                return (ladder[rule], turn);
        }

        foreach (var rung in ladder.Rungs)
        {
            var found = Find(board, rung);
            if (found.Count == 0)
                continue;
            var near = new Nearness(last);
            return AlsoTaken(board, rung, found)
                .SelectMany(open => open.Found, (open, deduction) => (open.Rung, Deduction: deduction))
                .MinBy(open => near.CostOf(open.Rung, open.Deduction));
        }

        return null;
    }

    /// <summary>
    /// Whether a person who takes a deduction of one rung looks at another rung at the same time: whoever places digits one after the
    /// other looks at all rules of that family at once. Common practice, no source.
    /// </summary>
    internal static bool AreTakenTogether(Rung rung, Deduction deduction, Rung other) =>
        rung.Family.Length > 0 && rung.Family == other.Family && !deduction.Places.IsEmpty;

    private IEnumerable<(Rung Rung, Findings Found)> AlsoTaken(Board board, Rung easiest, Findings found) => ladder.Rungs
        .Where(rung => rung.Place > easiest.Place && AreTakenTogether(easiest, found[0], rung))
        .Select(rung => (rung, Find(board, rung)))
        .Prepend((easiest, found));

    /// <summary>What the rule of a rung finds on a board; of a last resort only the first.</summary>
    internal Findings Find(Board board, Rung rung)
    {
        var found = new Findings(rung.Rule.Effort == Effort.LastResort ? 1 : int.MaxValue, cancel);
        rung.Rule.Find(board, found);
        cancel.ThrowIfCancellationRequested();
        return found;
    }
}
