using Companion.Engine;
using Companion.Engine.Proofs;
using Companion.Session.State;
using Companion.Session.Watch;

namespace Companion.Session.Asks.Steps;

/// <summary>Finds why a digit that stands there follows: what was open before it was placed.</summary>
internal static class EntryReason
{
    /// <summary>
    /// The easiest deduction that placed the digit and says nothing of any other, with the board on which it was open; null where
    /// there is none.
    /// </summary>
    /// <param name="state">What the viewer sees.</param>
    /// <param name="placed">The digit in its cell.</param>
    /// <param name="cache">Where what is open is looked up.</param>
    public static (Board Board, Deduction Deduction)? Of(SessionState state, Candidate placed, StepsCache cache)
    {
        if (WrongDigit.EntryOf(state, placed) is not { } entry || entry.Grid.Loading != state.Grid.Loading)
            return null;
        var steps = cache.On(entry.Grid, entry.Writing, state.Used);

        // One that places more would tell digits that may not stand there yet.
        var reason = steps.All().Select(step => step.Deduction).FirstOrDefault(deduction =>
            deduction.Places == CandidateSet.Empty.With(placed) && deduction.Removes.IsEmpty);
        return reason is null ? null : (steps.Known!, reason);
    }
}
