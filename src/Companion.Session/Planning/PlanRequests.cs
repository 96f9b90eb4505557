using Companion.Engine.Planning;
using Companion.Session.Commands;
using Companion.Session.Events;
using Companion.Session.State;

namespace Companion.Session.Planning;

/// <summary>Decides on what is planned for a puzzle.</summary>
internal static class PlanRequests
{
    public static Decision Feature(SessionState state, FeatureRules wanted, DateTimeOffset now)
    {
        if (Fault(wanted.Featured) is { } fault)
            return Decision.Refuse(fault);
        return wanted.Featured == state.Plan.Featured ? Decision.Nothing : Decision.Of(new RulesFeatured(now, wanted.Featured));
    }

    public static Decision Note(SessionState state, NoteStep note, DateTimeOffset now)
    {
        var text = string.Join(' ', note.Text.Split((char[]?)null, StringSplitOptions.RemoveEmptyEntries));
        if (text.Length > StepNote.LongestText)
            return Decision.Refuse($"A note has at most {StepNote.LongestText} characters: shorten it.");
        if (text.Any(char.IsControl))
            return Decision.Refuse("A note is one line of plain text: take the control characters out.");
        if ((note.Places | note.Removes).IsEmpty)
            return Decision.Refuse("A note belongs to a step that places or takes out something: choose one of the run sheet.");
        if (text == state.Notes.At(note.Places, note.Removes))
            return Decision.Nothing;
        var noted = new StepNoted(now, note.Places, note.Removes, text);
        return Evolver.Evolve(state, noted).Notes.Notes.Count <= PuzzleNotes.Most
            ? Decision.Of(noted)
            : Decision.Refuse($"At most {PuzzleNotes.Most} steps have notes: take some away.");
    }

    public static Decision Recall(SessionState state, RecallNotes recall, DateTimeOffset now) =>
        recall.Notes == state.Notes.Notes ? Decision.Nothing : Decision.Of(new NotesRecalled(now, recall.Notes));

    /// <summary>Why these rules cannot all be featured, in one plain sentence, or null.</summary>
    public static string? Fault(ValueArray<Feature> featured)
    {
        if (featured.Count > ShowPlan.MostFeatured)
            return $"At most {ShowPlan.MostFeatured} rules can be featured: leave some out.";
        return featured.DistinctBy(feature => feature.Rule).Count() < featured.Count
            ? "Each rule is featured once: leave out the second one."
            : null;
    }
}
