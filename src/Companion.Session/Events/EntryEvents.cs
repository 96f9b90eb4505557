using Companion.Engine;

namespace Companion.Session.Events;

/// <summary>A puzzle was loaded; the entries before it can still be undone back to.</summary>
/// <param name="At">When.</param>
/// <param name="Grid">The givens, 81 characters.</param>
/// <param name="Title">Title, may be empty.</param>
/// <param name="Setter">Credit, may be empty.</param>
/// <param name="Link">Address, may be empty.</param>
public sealed record PuzzleLoaded(DateTimeOffset At, string Grid, string Title, string Setter, string Link) : Event(At);

/// <summary>A digit was placed.</summary>
/// <param name="At">When.</param>
/// <param name="Cell">The cell.</param>
/// <param name="Digit">The digit.</param>
public sealed record DigitPlaced(DateTimeOffset At, Cell Cell, Digit Digit) : Event(At);

/// <summary>Cells were erased: the digit or, where there was none, the marks.</summary>
/// <param name="At">When.</param>
/// <param name="Cells">The cells, none of them a given.</param>
public sealed record CellsErased(DateTimeOffset At, CellSet Cells) : Event(At);

/// <summary>A block mark was written into cells or taken out of them.</summary>
/// <param name="At">When.</param>
/// <param name="Cells">Open cells of one block.</param>
/// <param name="Digit">The digit.</param>
/// <param name="IsSet">Written, or taken out.</param>
public sealed record BlockMarkChanged(DateTimeOffset At, CellSet Cells, Digit Digit, bool IsSet) : Event(At);

/// <summary>A digit was written into the candidate lists of cells or taken out of them.</summary>
/// <param name="At">When.</param>
/// <param name="Cells">Open cells.</param>
/// <param name="Digit">The digit.</param>
/// <param name="IsSet">Written, or taken out.</param>
public sealed record CellMarkChanged(DateTimeOffset At, CellSet Cells, Digit Digit, bool IsSet) : Event(At);

/// <summary>A candidate was struck in cells, or the strike taken back.</summary>
/// <param name="At">When.</param>
/// <param name="Cells">Open cells.</param>
/// <param name="Digit">The digit.</param>
/// <param name="IsStruck">Struck, or taken back.</param>
public sealed record StrikeChanged(DateTimeOffset At, CellSet Cells, Digit Digit, bool IsStruck) : Event(At);

/// <summary>The cell mark being written was finished.</summary>
/// <param name="At">When.</param>
public sealed record MarksSettled(DateTimeOffset At) : Event(At);

/// <summary>The grid went back to its givens.</summary>
/// <param name="At">When.</param>
public sealed record GridCleared(DateTimeOffset At) : Event(At);

/// <summary>The last entry was taken back.</summary>
/// <param name="At">When.</param>
public sealed record EntryUndone(DateTimeOffset At) : Event(At);

/// <summary>The entry taken back last was made again.</summary>
/// <param name="At">When.</param>
public sealed record EntryRedone(DateTimeOffset At) : Event(At);
