using System.Collections.Immutable;

namespace Companion.Engine;

/// <summary>Where the turns and mirrors of the grid take a cell.</summary>
public static class GridSymmetries
{
    /// <summary>All there are, in the order in which they are named.</summary>
    public static ImmutableArray<GridSymmetry> All { get; } = [.. Enum.GetValues<GridSymmetry>()];

    /// <summary>Where the cell comes to lie.</summary>
    /// <param name="symmetry">The turn or mirror.</param>
    /// <param name="cell">The cell.</param>
    /// <exception cref="ArgumentOutOfRangeException"><paramref name="symmetry"/> is none.</exception>
    public static Cell Image(this GridSymmetry symmetry, Cell cell)
    {
        var (row, column) = (cell.Row, cell.Column);
        return symmetry switch
        {
            GridSymmetry.HalfTurn => Cell.Of(10 - row, 10 - column),
            GridSymmetry.QuarterTurn => Cell.Of(column, 10 - row),
            GridSymmetry.LeftRight => Cell.Of(row, 10 - column),
            GridSymmetry.TopBottom => Cell.Of(10 - row, column),
            GridSymmetry.FallingDiagonal => Cell.Of(column, row),
            GridSymmetry.RisingDiagonal => Cell.Of(10 - column, 10 - row),
            _ => throw new ArgumentOutOfRangeException(nameof(symmetry)),
        };
    }

    /// <summary>The cells that it takes the cell to when it is done again and again; the cell is one of them. One, two or four.</summary>
    /// <param name="symmetry">The turn or mirror.</param>
    /// <param name="cell">The cell.</param>
    public static CellSet Orbit(this GridSymmetry symmetry, Cell cell)
    {
        var orbit = CellSet.Empty;
        for (var next = cell; !orbit.Contains(next); next = symmetry.Image(next))
            orbit = orbit.With(next);
        return orbit;
    }

    /// <summary>The turns and mirrors that leave a set of cells as it is.</summary>
    /// <param name="cells">The set, such as the givens of a puzzle.</param>
    public static ImmutableArray<GridSymmetry> Of(CellSet cells) =>
        [.. All.Where(symmetry => cells.All(cell => cells.Contains(symmetry.Image(cell))))];
}
