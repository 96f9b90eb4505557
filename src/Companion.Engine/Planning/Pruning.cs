using Companion.Engine.Proofs;

namespace Companion.Engine.Planning;

/// <summary>Drops the steps of a walk that nothing later rests on.</summary>
internal static class Pruning
{
    /// <summary>
    /// The steps that are needed: those that place a digit, the turns of featured rules, and those without which one of them would not
    /// hold or the end would not be the same. From the last to the first: a step that is kept is not made needless by dropping one
    /// before it.
    /// </summary>
    /// <param name="steps">The steps of a walk.</param>
    /// <param name="isTurn">Whether a step is the turn of a featured rule, by its place.</param>
    /// <returns>Their places in the walk, in order.</returns>
    internal static List<int> Needed(IReadOnlyList<WalkStep> steps, Predicate<int> isTurn)
    {
        if (steps.Count == 0)
            return [];
        var end = steps[^1].Board.Apply(steps[^1].Deduction).Candidates;
        var kept = Enumerable.Range(0, steps.Count).ToList();
        for (var index = kept.Count - 1; index >= 0; index--)
        {
            var place = kept[index];
            if (!steps[place].Deduction.Places.IsEmpty || isTurn(place))
                continue;
            if (LeadOn(steps[place].Board, kept.Skip(index + 1).Select(later => steps[later].Deduction), end))
                kept.RemoveAt(index);
        }

        return kept;
    }

    // What a pattern rests on is all that must be absent: where more candidates stand elsewhere it holds as well.
    private static bool LeadOn(Board board, IEnumerable<Deduction> steps, in CandidateSet end)
    {
        foreach (var step in steps)
        {
            if (!board.Candidates.ContainsAll(step.Places) || !(board.Candidates & step.RestsOn).IsEmpty)
                return false;
            board = board.Apply(step);
        }

        return board.Candidates == end;
    }
}
