using Companion.Engine;
using Companion.Engine.Planning;
using Companion.Session.State;

namespace Companion.Session.Planning;

/// <summary>What is planned for a puzzle. Compared by value.</summary>
/// <param name="Loading">The loading of the puzzle that it belongs to; see <see cref="Grid.Loading"/>.</param>
/// <param name="Featured">The rules that the puzzle is to show, at most <see cref="MostFeatured"/>, each once.</param>
/// <param name="Notes">What is to be said at steps, at most <see cref="MostNotes"/>.</param>
public sealed record ShowPlan(int Loading, ValueArray<Feature> Featured, ValueArray<StepNote> Notes)
{
    /// <summary>So many rules can be featured: more than that are no feature any more.</summary>
    public const int MostFeatured = 5;

    /// <summary>So many steps can have notes: a puzzle hardly takes as many steps.</summary>
    public const int MostNotes = 200;

    /// <summary>What is to be said at a step; empty where nothing is.</summary>
    /// <param name="places">The digits that the step places.</param>
    /// <param name="removes">The candidates that it takes out.</param>
    public string NoteOf(CandidateSet places, CandidateSet removes) =>
        Notes.FirstOrDefault(note => note.IsOf(places, removes))?.Text ?? "";

    /// <summary>The plan with a note instead of what was noted at that step; an empty one takes it away.</summary>
    internal ShowPlan With(StepNote note) => this with
    {
        Notes = new(
        [
            .. Notes.Where(other => !other.IsOf(note.Places, note.Removes)),
            .. note.Text.Length > 0 ? [note] : Array.Empty<StepNote>(),
        ]),
    };
}
