using Companion.Engine.Proofs;

namespace Companion.Engine.Planning;

/// <summary>Drops the steps of a walk that nothing later rests on.</summary>
internal static class Pruning
{
    /// <summary>
    /// The steps that are needed: those that must stay, and those without which one of them would not hold or the end would not be
    /// reached. Tried from the last to the first, again and again until none can go.
    /// </summary>
    /// <param name="start">The board before the first step.</param>
    /// <param name="steps">Steps that are open one after the other.</param>
    /// <param name="stays">Whether a step must stay, by its place.</param>
    /// <param name="holds">Whether a step holds on a board.</param>
    /// <param name="isReached">Whether a board is the wanted end.</param>
    /// <returns>Their places, in order.</returns>
    internal static List<int> Needed(
        Board start, IReadOnlyList<Deduction> steps, Predicate<int> stays, Func<Board, Deduction, bool> holds, Predicate<Board> isReached)
    {
        var kept = Enumerable.Range(0, steps.Count).ToList();
        for (var count = int.MaxValue; kept.Count < count;)
        {
            count = kept.Count;
            var boards = BoardsBefore(kept);
            for (var index = count - 1; index >= 0; index--)
            {
                if (!stays(kept[index]) && LeadOn(boards[index], kept.Skip(index + 1).Select(later => steps[later])))
                    kept.RemoveAt(index);
            }
        }

        return kept;

        List<Board> BoardsBefore(List<int> places)
        {
            var (boards, board) = (new List<Board>(places.Count), start);
            foreach (var place in places)
            {
                boards.Add(board);
                board = board.Apply(steps[place]);
            }

            return boards;
        }

        bool LeadOn(Board from, IEnumerable<Deduction> rest)
        {
            foreach (var step in rest)
            {
                if (!holds(from, step))
                    return false;
                from = from.Apply(step);
            }

            return isReached(from);
        }
    }

    /// <summary>
    /// Whether nothing stands that a step rests on being gone. Enough where the same cells are filled as where it was found.
    /// </summary>
    internal static bool RestsOnNothing(Board board, Deduction step) =>
        board.Candidates.ContainsAll(step.Places) && (board.Candidates & step.RestsOn).IsEmpty;

    /// <summary>Whether a step is proved on a board.</summary>
    internal static bool IsProved(Board board, Deduction step) =>
        board.Candidates.ContainsAll(step.Places) && ProofChecker.Holds(board, step);
}
