using Companion.Session.State;

namespace Companion.Session.Events;

/// <summary>The cells that viewers call stand by, as they were then.</summary>
/// <param name="At">When.</param>
/// <param name="Cells">The cells in reading order, at least one.</param>
public sealed record CallsStoodBy(DateTimeOffset At, ValueArray<CalledCell> Cells) : Event(At);

/// <summary>Viewers had found the digits of these cells before anybody can have seen the presenter's entry. Tells nothing of who they are.</summary>
/// <param name="At">When that was sure: as soon as the quickest viewer can have seen the entry.</param>
/// <param name="Cells">The cells in reading order, at least one, each with how many viewers at least were right.</param>
public sealed record CellsFoundFirst(DateTimeOffset At, ValueArray<CalledCell> Cells) : Event(At);

/// <summary>The cells that viewers call were put on air.</summary>
/// <param name="At">When.</param>
/// <param name="Cells">The cells in reading order, at least one.</param>
public sealed record CallsPutOnAir(DateTimeOffset At, ValueArray<CalledCell> Cells) : Event(At);
