using Companion.Engine.Proofs;
using Companion.Session.State;

namespace Companion.Session.Events;

/// <summary>A deduction was put at the end of the cue list.</summary>
/// <param name="At">When.</param>
/// <param name="Id">The new call-out.</param>
/// <param name="Deduction">The whole deduction.</param>
/// <param name="Grade">How much of it is to be said.</param>
public sealed record DeductionCued(DateTimeOffset At, int Id, Deduction Deduction, Grade Grade) : Event(At);

/// <summary>A talking point was put at the end of the cue list.</summary>
/// <param name="At">When.</param>
/// <param name="Id">The new call-out.</param>
/// <param name="Text">The words.</param>
public sealed record TextCued(DateTimeOffset At, int Id, string Text) : Event(At);

/// <summary>The words of a talking point were changed.</summary>
/// <param name="At">When.</param>
/// <param name="Id">The call-out.</param>
/// <param name="Text">The new words.</param>
public sealed record CueReworded(DateTimeOffset At, int Id, string Text) : Event(At);

/// <summary>The grade of a deduction on the cue list was changed.</summary>
/// <param name="At">When.</param>
/// <param name="Id">The call-out.</param>
/// <param name="Grade">The new grade.</param>
public sealed record CueRegraded(DateTimeOffset At, int Id, Grade Grade) : Event(At);

/// <summary>A call-out was moved.</summary>
/// <param name="At">When.</param>
/// <param name="Id">The call-out.</param>
/// <param name="After">The one that it came behind, or null for the head of the list.</param>
public sealed record CueMoved(DateTimeOffset At, int Id, int? After) : Event(At);

/// <summary>A call-out stood by, went, was done, or waits on the list again.</summary>
/// <param name="At">When.</param>
/// <param name="Id">The call-out.</param>
/// <param name="Stage">The new stage.</param>
public sealed record CueTurned(DateTimeOffset At, int Id, CueStage Stage) : Event(At);

/// <summary>Call-outs were taken off the list.</summary>
/// <param name="At">When.</param>
/// <param name="Ids">Which, at least one.</param>
public sealed record CuesRemoved(DateTimeOffset At, ValueArray<int> Ids) : Event(At);
