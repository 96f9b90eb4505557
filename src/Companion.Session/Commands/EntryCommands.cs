using Companion.Engine;
using Companion.Engine.Planning;
using Companion.Session.State;

namespace Companion.Session.Commands;

/// <summary>Load another puzzle. Refused with every reason unless it has exactly one solution.</summary>
/// <param name="Grid">As pasted; see <see cref="BoardText.Read"/>.</param>
/// <param name="Title">Title, may be empty.</param>
/// <param name="Setter">Credit, may be empty.</param>
/// <param name="Link">Address, may be empty; only http and https are taken.</param>
public sealed record LoadPuzzle(string Grid, string Title, string Setter, string Link) : Command
{
    /// <summary>The rules that the puzzle is to show; none by default.</summary>
    public ValueArray<Feature> Featured { get; init; }
}

/// <summary>Place a digit. A wrong digit is taken (Watch speaks up); a given is never overwritten.</summary>
/// <param name="Cell">The cell.</param>
/// <param name="Digit">The digit; the one that stands there already is refused.</param>
public sealed record PlaceDigit(Cell Cell, Digit Digit) : Command;

/// <summary>Take the placed digit out of each cell or, where there is none, the cell mark, block marks and strikes.</summary>
/// <param name="Cells">The cells; givens among them are left alone.</param>
public sealed record EraseCells(CellSet Cells) : Command;

/// <summary>Write or take back a digit as a block mark: out of all these cells if it is in all of them, else into all.</summary>
/// <param name="Cells">Open cells of one block.</param>
/// <param name="Digit">The digit.</param>
public sealed record ToggleBlockMark(CellSet Cells, Digit Digit) : Command;

/// <summary>
/// Write or take back a digit in the candidate list of cells: out of all if it is in all of them, else into all. A list into
/// which a digit was written does not count until it is settled; one from which a digit was taken counts as it did before.
/// </summary>
/// <param name="Cells">Open cells.</param>
/// <param name="Digit">The digit.</param>
public sealed record ToggleCellMark(CellSet Cells, Digit Digit) : Command;

/// <summary>Strike a candidate in cells, or take the strike back where it is struck in all of them.</summary>
/// <param name="Cells">Open cells.</param>
/// <param name="Digit">The digit.</param>
public sealed record ToggleStrike(CellSet Cells, Digit Digit) : Command;

/// <summary>The cell mark being written is finished and counts from now on.</summary>
public sealed record SettleMarks : Command;

/// <summary>Take back the last entry.</summary>
public sealed record Undo : Command;

/// <summary>Make the entry again that was taken back last.</summary>
public sealed record Redo : Command;

/// <summary>Back to the givens; can be undone.</summary>
public sealed record ClearGrid : Command;
