using Companion.Engine;
using Companion.Session.State;

namespace Companion.Session.Planning;

/// <summary>What is to be said at the steps of a puzzle, however often it is loaded. Compared by value.</summary>
/// <param name="Givens">The puzzle as it was loaded, 81 characters; empty for no puzzle.</param>
/// <param name="Notes">What was noted, at most <see cref="Most"/>, in the order in which it was written.</param>
public sealed record PuzzleNotes(string Givens, ValueArray<StepNote> Notes)
{
    /// <summary>So many steps can have notes: a puzzle hardly takes as many steps.</summary>
    public const int Most = 200;

    /// <summary>What is to be said at a step; empty where nothing is.</summary>
    /// <param name="places">The digits that the step places.</param>
    /// <param name="removes">The candidates that it takes out.</param>
    public string At(CandidateSet places, CandidateSet removes) =>
        Notes.FirstOrDefault(note => note.IsOf(places, removes))?.Text ?? "";

    /// <summary>The notes with one instead of what was noted at that step; an empty one takes it away.</summary>
    internal PuzzleNotes With(StepNote note) => this with
    {
        Notes = new(
        [
            .. Notes.Where(other => !other.IsOf(note.Places, note.Removes)),
            .. note.Text.Length > 0 ? [note] : Array.Empty<StepNote>(),
        ]),
    };
}
