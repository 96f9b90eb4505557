using Companion.Engine;
using Companion.Engine.Proofs;
using Companion.Session.Boards;
using Companion.Session.State;
using Companion.Session.Watch;

namespace Companion.Session.Asks.Steps;

/// <summary>Why a digit that stands there follows: the deduction that places it, and nothing of any other digit.</summary>
/// <param name="Board">The board on which the deduction is told.</param>
/// <param name="Deduction">The deduction.</param>
/// <param name="StepsBefore">How many deductions lead up to it; 0 where it was open before the digit was placed.</param>
internal sealed record EntryReason(Board Board, Deduction Deduction, int StepsBefore)
{
    /// <summary>
    /// The reason, from the proof that the session keeps of the entry or else from what was open before it; null where there is none,
    /// or none that a viewer may be told.
    /// </summary>
    /// <param name="state">What the viewer sees.</param>
    /// <param name="placed">The digit in its cell.</param>
    /// <param name="cache">Where what is open is looked up.</param>
    public static EntryReason? Of(SessionState state, Candidate placed, StepsCache cache)
    {
        // From a board with a wrong digit on it a wrong one may well follow.
        if (state.Grid.Puzzle?.Solution.Holds(placed) != true)
            return null;
        if (WrongDigit.EntryOf(state, placed) is not { } entry || entry.Grid.Loading != state.Grid.Loading)
            return null;
        return Kept(state, entry, placed) ?? Open(state, entry, placed, cache);
    }

    private static EntryReason? Kept(SessionState state, Step entry, Candidate placed)
    {
        var kept = state.Attributions.LastOrDefault(attributed => attributed.Entry == entry.Number)?.Attribution;
        if (kept is not Attribution.Proved proved || SeenBoard.Of(entry.Grid, entry.Writing).Value is not { } board)
            return null;
        if (proved.AtOnce is { } atOnce && MayBeTold(atOnce, placed))
            return new(board, atOnce, 0);
        return proved.Steps.LastOrDefault() is { } last && MayBeTold(last, placed) ? new(board, last, proved.Steps.Length - 1) : null;
    }

    private static EntryReason? Open(SessionState state, Step entry, Candidate placed, StepsCache cache)
    {
        var steps = cache.Before(state, entry);
        var open = steps.All().Select(step => step.Deduction).FirstOrDefault(deduction => MayBeTold(deduction, placed));
        return open is null ? null : new(steps.Known!, open, 0);
    }

    // One that places more, or takes something out, would tell what may not be on the board yet.
    private static bool MayBeTold(Deduction deduction, Candidate placed) =>
        deduction.Places == CandidateSet.Empty.With(placed) && deduction.Removes.IsEmpty && !deduction.AssumesOneSolution;
}
