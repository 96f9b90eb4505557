using Companion.Engine.Proofs;

namespace Companion.Engine.Planning.Talking;

/// <summary>Counts the steps of a route that rest on what earlier ones do in a block.</summary>
internal static class RestingSteps
{
    /// <summary>
    /// How many steps would not be there without what is placed in a block and removed from it: those that rest on it, and those that
    /// rest on what such steps do.
    /// </summary>
    /// <param name="plan">The route.</param>
    /// <param name="block">The block.</param>
    internal static int CountOf(RunPlan plan, House block)
    {
        var (board, count) = (plan.Start, 0);
        foreach (var step in plan.Steps)
        {
            if (!IsThere(step, board))
            {
                count++;
                continue;
            }

            board = board.Remove(step.Deduction.Removes - CandidateSet.Of(block.Cells, DigitSet.All));
            foreach (var placed in step.Deduction.Places)
                board = block.Cells.Contains(placed.Cell) ? board : board.Place(placed);
        }

        return count;
    }

    private static bool IsThere(PlannedStep step, Board board)
    {
        var deduction = step.Deduction;
        if (!(board.Candidates & deduction.RestsOn).IsEmpty)
            return false;
        var absent = deduction.RestsOn;
        var isLess = false;
        foreach (var house in deduction.Houses)
        {
            // What was filled then may be open here: the step must hold with what stands there.
            var places = CandidateSet.Of(board.Open & house.Cells, deduction.Digits);
            isLess |= !(places & board.Candidates & CandidateSet.Of(step.Board.Filled, DigitSet.All)).IsEmpty;
            absent |= places - board.Candidates;
        }

        return !isLess || ProofChecker.Holds(board, deduction.RestingOn(absent));
    }
}
