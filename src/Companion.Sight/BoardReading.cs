using System.Collections.Immutable;
using Companion.Engine;

namespace Companion.Sight;

/// <summary>What was read of a whole grid.</summary>
/// <param name="Cells">All 81 cells, row by row.</param>
public sealed record BoardReading(ImmutableArray<CellReading> Cells)
{
    /// <summary>What was read in a cell.</summary>
    /// <param name="cell">The cell.</param>
    public CellReading this[Cell cell] => Cells[cell.Index];

    /// <summary>The grid as it was read, not validated. Digits that nothing tells apart from givens count as givens.</summary>
    public GridDraft ToDraft() => new(string.Concat(Cells.Select(cell => cell.Digit is { } digit ? digit.ToString() : ".")))
    {
        Placed = CellSet.Of([.. Cells.Where(cell => cell.IsGiven == false).Select(cell => cell.Cell)]),
    };
}
