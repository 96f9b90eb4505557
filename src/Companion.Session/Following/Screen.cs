using System.Collections.Immutable;
using Companion.Engine;

namespace Companion.Session.Following;

/// <summary>The grid on the presenter's screen, as it was read from one frame. It may be anything.</summary>
public sealed class Screen
{
    private readonly ImmutableArray<SeenCell> _cells;

    /// <summary>Makes a screen of its cells.</summary>
    /// <param name="cells">All 81, row by row.</param>
    /// <exception cref="ArgumentException">There are not 81.</exception>
    public Screen(ImmutableArray<SeenCell> cells)
    {
        if (cells.Length != Cell.Count)
            throw new ArgumentException("A screen has 81 cells.", nameof(cells));
        _cells = cells;
    }

    /// <summary>What was read in a cell.</summary>
    /// <param name="cell">The cell.</param>
    public SeenCell this[Cell cell] => _cells[cell.Index];

    /// <summary>The screen with every cell changed.</summary>
    /// <param name="change">Makes a cell of the one before.</param>
    public Screen Each(Func<Cell, SeenCell, SeenCell> change)
    {
        ArgumentNullException.ThrowIfNull(change);
        return new([.. CellSet.All.Select(cell => change(cell, this[cell]))]);
    }

    /// <summary>The cells of which something holds.</summary>
    /// <param name="holds">What, of a cell and what was read there.</param>
    public CellSet Where(Func<Cell, SeenCell, bool> holds)
    {
        ArgumentNullException.ThrowIfNull(holds);
        return CellSet.Of([.. CellSet.All.Where(cell => holds(cell, this[cell]))]);
    }

    /// <summary>The digits, 81 characters, of the cells that may be givens.</summary>
    /// <param name="isCounted">Which cells to look at.</param>
    public string Givens(Func<SeenCell, bool> isCounted) => string.Concat(_cells.Select(cell =>
        cell is { Content.Digit: { } digit, IsGiven: not false } && isCounted(cell) ? digit.ToString() : BoardText.Blank.ToString()));
}
