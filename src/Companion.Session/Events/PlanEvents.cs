using Companion.Engine;
using Companion.Engine.Planning;
using Companion.Session.Planning;
using Companion.Session.State;

namespace Companion.Session.Events;

/// <summary>The rules were set that the puzzle is to show.</summary>
/// <param name="At">When.</param>
/// <param name="Featured">All of them, in order.</param>
public sealed record RulesFeatured(DateTimeOffset At, ValueArray<Feature> Featured) : Event(At);

/// <summary>A note was written down for a step of the run sheet, or taken away.</summary>
/// <param name="At">When.</param>
/// <param name="Places">The digits that the step places.</param>
/// <param name="Removes">The candidates that it takes out.</param>
/// <param name="Text">The words; empty where the note was taken away.</param>
public sealed record StepNoted(DateTimeOffset At, CandidateSet Places, CandidateSet Removes, string Text) : Event(At);

/// <summary>The notes that were kept with the puzzle came with it, so that the show has them and replays on its own.</summary>
/// <param name="At">When.</param>
/// <param name="Notes">All notes of the puzzle, in order.</param>
public sealed record NotesRecalled(DateTimeOffset At, ValueArray<StepNote> Notes) : Event(At);
