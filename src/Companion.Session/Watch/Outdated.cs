using Companion.Engine;
using Companion.Engine.Proofs;
using Companion.Session.Boards;
using Companion.Session.State;

namespace Companion.Session.Watch;

/// <summary>Says of deductions that were chosen some entries ago whether they can still be shown.</summary>
internal static class Outdated
{
    /// <summary>
    /// Asks for deductions of one state why they are outdated, as in "has been passed"; null for one that is not.
    /// </summary>
    /// <param name="state">The state.</param>
    public static Func<Chosen, string?> On(SessionState state)
    {
        var seen = SeenBoard.Of(state.Grid, state.Writing).Value;
        var known = KnownBoard.Of(state).Value;
        return chosen =>
        {
            if (IsDone(state, seen, chosen.Deduction))
                return "has been carried out";
            if ((chosen.Board.Open & chosen.Deduction.PatternCells & state.Grid.Filled) is { IsEmpty: false })
                return "has been passed";
            // On a broken board nothing can be said; other warnings are about that.
            return known is null || chosen.Grounded.HoldsOn(state.Grid, known.Candidates) ? null : "no longer holds on this board";
        };
    }

    /// <summary>Whether viewers can see all that a deduction concludes.</summary>
    public static bool IsDone(SessionState state, Deduction deduction) =>
        IsDone(state, SeenBoard.Of(state.Grid, state.Writing).Value, deduction);

    private static bool IsDone(SessionState state, Board? seen, Deduction deduction) =>
        seen is not null && state.Grid.Placed.ContainsAll(deduction.Places) && (seen.Candidates & deduction.Removes).IsEmpty;
}
