using Companion.Engine;
using Companion.Session.State;

namespace Companion.Session.Following;

/// <summary>What stands in one cell, on the presenter's screen or in the session. The default value is an empty cell.</summary>
/// <param name="Digit">The digit, given or placed, or null.</param>
/// <param name="BlockMarks">The digits written as block marks.</param>
/// <param name="CellMark">The candidate list.</param>
/// <param name="Struck">The digits with a line through them.</param>
public readonly record struct CellContent(Digit? Digit, DigitSet BlockMarks = default, DigitSet CellMark = default, DigitSet Struck = default)
{
    /// <summary>Whether nothing stands there.</summary>
    public bool IsEmpty => this == default;

    /// <summary>The digit alone.</summary>
    public CellContent WithoutMarks() => new(Digit);

    /// <summary>What stands in a cell of a grid.</summary>
    /// <param name="grid">The grid.</param>
    /// <param name="cell">The cell.</param>
    public static CellContent Of(Grid grid, Cell cell)
    {
        ArgumentNullException.ThrowIfNull(grid);
        return new(grid.DigitAt(cell), grid.BlockMarks.In(cell), grid.CellMarks[cell], grid.Struck[cell]);
    }
}
