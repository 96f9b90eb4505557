using Companion.Session.State;

namespace Companion.Session.Events;

/// <summary>The cells that viewers call stand by, as they were then.</summary>
/// <param name="At">When.</param>
/// <param name="Cells">The cells in reading order, at least one.</param>
public sealed record CallsStoodBy(DateTimeOffset At, ValueArray<CalledCell> Cells) : Event(At);

/// <summary>The cells that viewers call were put on air.</summary>
/// <param name="At">When.</param>
/// <param name="Cells">The cells in reading order, at least one.</param>
public sealed record CallsPutOnAir(DateTimeOffset At, ValueArray<CalledCell> Cells) : Event(At);
