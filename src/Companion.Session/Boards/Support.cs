using Companion.Engine;
using Companion.Engine.Proofs;
using Companion.Session.State;

namespace Companion.Session.Boards;

/// <summary>What of a deduction's support viewers cannot see, and which deduction took it out.</summary>
/// <param name="Unseen">Candidates it rests on that no viewer can see to be gone.</param>
/// <param name="First">The deduction, shown or used before, that took the first of them out; null where none is unseen.</param>
public readonly record struct Support(CandidateSet Unseen, Deduction? First)
{
    /// <summary>Asks for the support of deductions on one state.</summary>
    /// <param name="state">The state.</param>
    /// <param name="seen">Its seen board.</param>
    public static Func<Deduction, Support> On(SessionState state, Board seen)
    {
        ArgumentNullException.ThrowIfNull(state);
        ArgumentNullException.ThrowIfNull(seen);
        var taken = KnownBoard.Taken(state.Grid, seen, state.Used).ToList();
        return deduction =>
        {
            var unseen = deduction.RestsOn & seen.Candidates;
            return unseen.IsEmpty ? default : new(unseen, taken.Find(step => !(step.Gone & unseen).IsEmpty).Used?.Deduction);
        };
    }
}
