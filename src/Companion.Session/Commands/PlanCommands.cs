using Companion.Engine;
using Companion.Engine.Planning;
using Companion.Session.Planning;
using Companion.Session.State;

namespace Companion.Session.Commands;

/// <summary>Set the rules that the puzzle is to show; they are forgotten with the puzzle.</summary>
/// <param name="Featured">All of them, each once, in the order in which they are named; none for no rule.</param>
public sealed record FeatureRules(ValueArray<Feature> Featured) : Command;

/// <summary>Write down what is to be said at a step of the run sheet.</summary>
/// <param name="Places">The digits that the step places.</param>
/// <param name="Removes">The candidates that it takes out; a step concludes something.</param>
/// <param name="Text">One line of at most <see cref="StepNote.LongestText"/> characters; empty for no note.</param>
public sealed record NoteStep(CandidateSet Places, CandidateSet Removes, string Text) : Command;

/// <summary>Take the notes that were kept with the puzzle on the board, in place of those that this show has of it.</summary>
/// <param name="Notes">All of them, in order.</param>
public sealed record RecallNotes(ValueArray<StepNote> Notes) : Command;
