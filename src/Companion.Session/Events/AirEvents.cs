using Companion.Engine.Proofs;
using Companion.Session.State;

namespace Companion.Session.Events;

/// <summary>A deduction stands by.</summary>
/// <param name="At">When.</param>
/// <param name="Deduction">The whole deduction, so that a log can be read when the rules have changed.</param>
public sealed record StoodBy(DateTimeOffset At, Deduction Deduction) : Event(At);

/// <summary>Nothing stands by any more.</summary>
/// <param name="At">When.</param>
public sealed record StoodDown(DateTimeOffset At) : Event(At);

/// <summary>A deduction was put on air at a grade, from stand by or from another grade.</summary>
/// <param name="At">When.</param>
/// <param name="Deduction">The whole deduction.</param>
/// <param name="Grade">The grade.</param>
public sealed record PutOnAir(DateTimeOffset At, Deduction Deduction, Grade Grade) : Event(At);

/// <summary>The overlay was cleared.</summary>
/// <param name="At">When.</param>
public sealed record AirCleared(DateTimeOffset At) : Event(At);

/// <summary>The presenter said or used a deduction.</summary>
/// <param name="At">When.</param>
/// <param name="Deduction">The whole deduction.</param>
public sealed record DeductionUsed(DateTimeOffset At, Deduction Deduction) : Event(At);

/// <summary>Co-hosts were allowed or forbidden to put things on air.</summary>
/// <param name="At">When.</param>
/// <param name="Allowed">Yes or no.</param>
public sealed record CoHostOnAirAllowed(DateTimeOffset At, bool Allowed) : Event(At);

/// <summary>The board's place in a scene was set.</summary>
/// <param name="At">When.</param>
/// <param name="Scene">The scene.</param>
/// <param name="Frame">Where.</param>
public sealed record FramePlaced(DateTimeOffset At, string Scene, Frame Frame) : Event(At);

/// <summary>A scene was forgotten.</summary>
/// <param name="At">When.</param>
/// <param name="Scene">The scene.</param>
public sealed record SceneForgotten(DateTimeOffset At, string Scene) : Event(At);

/// <summary>The frame's outline was shown on a scene's overlay, or hidden.</summary>
/// <param name="At">When.</param>
/// <param name="Scene">The scene, or null for hidden.</param>
public sealed record FrameShown(DateTimeOffset At, string? Scene) : Event(At);
