using Companion.Session.Events;
using Companion.Session.State;

namespace Companion.Session.Cues;

/// <summary>What the events of the cue list do to it.</summary>
internal static class CueEffects
{
    /// <summary>The list after an event; the same one after an event that is none of the list's.</summary>
    /// <param name="state">The state before it.</param>
    /// <param name="happened">The event.</param>
    public static CueList Apply(SessionState state, Event happened)
    {
        var cues = state.Cues;
        return happened switch
        {
            DeductionCued cued => cues.Add(new DeductionCallOut(
                cued.Id, CallOut.FirstVersion, CueStage.Listed, Chosen.In(state, cued.Deduction), cued.Grade)),
            TextCued cued => cues.Add(new TextCallOut(cued.Id, CallOut.FirstVersion, CueStage.Listed, cued.Text)),
            CueReworded reworded => cues.Change(reworded.Id, old => old is TextCallOut text
                ? text with { Text = reworded.Text, Version = text.Version + 1 }
                : old),
            CueRegraded regraded => cues.Change(regraded.Id, old => old is DeductionCallOut deduction
                ? deduction with { Grade = regraded.Grade, Version = deduction.Version + 1 }
                : old),
            CueMoved moved => cues.Move(moved.Id, moved.After),
            CueTurned turned => cues.Change(turned.Id, old => old.At(turned.Stage)),
            CuesRemoved removed => cues.Remove(removed.Ids),
            _ => cues,
        };
    }
}
