using Companion.Session.State;
using Companion.Session.Watch;

namespace Companion.Session.Cues;

/// <summary>What has become of deductions on the cue list since they were put there.</summary>
internal static class Fate
{
    /// <summary>
    /// Asks for deductions of one state why they are not open any more, as in "has been passed"; null for one that is. It is found
    /// anew in every state: what was passed can come open again by an undo.
    /// </summary>
    /// <param name="state">The state.</param>
    public static Func<Chosen, string?> On(SessionState state)
    {
        var outdated = Outdated.On(state);
        var used = state.Used.Where(used => used.Loading == state.Grid.Loading).Select(used => used.Deduction).ToHashSet();
        return chosen => chosen.Grounded.Loading != state.Grid.Loading ? "belongs to a puzzle that was loaded before"
            : used.Contains(chosen.Deduction) ? "has been said or used"
            : outdated(chosen);
    }
}
