using Companion.Engine;
using Companion.Engine.Proofs;

namespace Companion.Session.State;

/// <summary>A deduction with what it took for granted on the grid where it was found.</summary>
/// <param name="Loading">The loading of a puzzle that it belongs to; see <see cref="Grid.Loading"/>.</param>
/// <param name="Deduction">The deduction.</param>
/// <param name="Digits">
/// The digits that stood in its houses. <see cref="Engine.Proofs.Deduction.RestsOn"/> names candidates in open cells only: a cell
/// that was filled is support too, and when its digit is taken out the deduction no longer counts.
/// </param>
public sealed record Grounded(int Loading, Deduction Deduction, CandidateSet Digits)
{
    /// <summary>A deduction found on a grid.</summary>
    public static Grounded On(Grid grid, Deduction deduction)
    {
        ArgumentNullException.ThrowIfNull(grid);
        ArgumentNullException.ThrowIfNull(deduction);
        var cells = CellSet.Empty;
        foreach (var house in deduction.Houses)
            cells |= house.Cells;
        return new(grid.Loading, deduction, grid.Digits.In(cells));
    }

    /// <summary>Whether all that it took for granted is so on a grid.</summary>
    /// <param name="grid">The grid.</param>
    /// <param name="standing">The candidates that stand there.</param>
    public bool HoldsOn(Grid grid, in CandidateSet standing)
    {
        ArgumentNullException.ThrowIfNull(grid);
        var digits = grid.Digits;
        return Loading == grid.Loading && digits.ContainsAll(Digits) && (Deduction.RestsOn & (standing | digits)).IsEmpty;
    }
}
