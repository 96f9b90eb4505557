namespace Companion.Session.Events;

/// <summary>
/// A show began: nothing of what came before is on the board, on air or in the history any more. The events from here to the next of
/// this kind are all of the show and lead to its states on their own.
/// </summary>
/// <param name="At">When.</param>
/// <param name="Title">What the presenter calls it; may be empty.</param>
/// <param name="Entries">How many entries the session counted before it; they are counted on, so that a number names one entry.</param>
/// <param name="Loadings">How many puzzles were loaded before it; they are counted on too.</param>
public sealed record ShowBegun(DateTimeOffset At, string Title, int Entries, int Loadings) : Event(At);

/// <summary>The recording started; what was recorded before, if anything, is another recording.</summary>
/// <param name="At">When.</param>
public sealed record RecordingStarted(DateTimeOffset At) : Event(At);

/// <summary>The recording paused.</summary>
/// <param name="At">When.</param>
public sealed record RecordingPaused(DateTimeOffset At) : Event(At);

/// <summary>The recording went on after a pause.</summary>
/// <param name="At">When.</param>
public sealed record RecordingResumed(DateTimeOffset At) : Event(At);

/// <summary>The recording stopped.</summary>
/// <param name="At">When.</param>
public sealed record RecordingStopped(DateTimeOffset At) : Event(At);
