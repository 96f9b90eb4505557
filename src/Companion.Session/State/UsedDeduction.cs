using Companion.Engine;
using Companion.Engine.Proofs;

namespace Companion.Session.State;

/// <summary>A deduction that was said, shown in full or used, with what it took for granted when it was.</summary>
/// <param name="Loading">The loading of a puzzle that it belongs to; see <see cref="Grid.Loading"/>.</param>
/// <param name="Deduction">The deduction.</param>
/// <param name="Digits">
/// The digits that stood in its houses. <see cref="Engine.Proofs.Deduction.RestsOn"/> names candidates in open cells only: a cell
/// that was filled is support too, and when its digit is taken out the deduction no longer counts.
/// </param>
public sealed record UsedDeduction(int Loading, Deduction Deduction, CandidateSet Digits)
{
    /// <summary>A deduction said, shown or used on a grid.</summary>
    public static UsedDeduction On(Grid grid, Deduction deduction)
    {
        ArgumentNullException.ThrowIfNull(grid);
        ArgumentNullException.ThrowIfNull(deduction);
        var cells = CellSet.Empty;
        foreach (var house in deduction.Houses)
            cells |= house.Cells;
        return new(grid.Loading, deduction, grid.Digits.In(cells));
    }

    /// <summary>Whether all that it took for granted is still so.</summary>
    /// <param name="loading">The loading of a puzzle that is being worked.</param>
    /// <param name="digits">The digits of the filled cells.</param>
    /// <param name="standing">The candidates that stand.</param>
    public bool HoldsOn(int loading, in CandidateSet digits, in CandidateSet standing) =>
        Loading == loading && digits.ContainsAll(Digits) && (Deduction.RestsOn & (standing | digits)).IsEmpty;
}
