using Companion.Engine.Proofs;
using Companion.Engine.Rules;

namespace Companion.Engine.Planning;

/// <summary>
/// Which of the open deductions of one difficulty a person takes next: near the last entry, the digit just placed, the house that is
/// nearly full. Common practice, no source.
/// </summary>
/// <param name="last">What was deduced last; null at the start.</param>
internal sealed class Nearness(Deduction? last)
{
    // So much cost is a step away worth: a hidden single (4) beside the last entry comes before a full house (2) across the grid.
    private const int Step = 6;

    private readonly CellSet _around = last is null ? CellSet.Empty : last.Places.IsEmpty ? last.Removes.Cells : last.Places.Cells;

    /// <summary>What taking the deduction costs a person: the rule's cost, and more the farther away it is.</summary>
    internal int CostOf(Rung rung, Deduction deduction) => rung.Cost + Step * Distance(deduction);

    // 0 for the digit just placed or a cell in the same house, 1 in the same band or stack, 2 elsewhere.
    private int Distance(Deduction deduction)
    {
        if (last is null)
            return 0;
        var cells = deduction.Places.IsEmpty ? deduction.PatternCells : deduction.Places.Cells;
        if (!deduction.Places.IsEmpty && deduction.Places.Digits == last.Places.Digits)
            return 0;
        if (HouseSet.All.Any(house => !(house.Cells & cells).IsEmpty && !(house.Cells & _around).IsEmpty))
            return 0;
        for (var index = 0; index < Chute.Count; index++)
        {
            var chute = Chute.At(index).Cells;
            if (!(chute & cells).IsEmpty && !(chute & _around).IsEmpty)
                return 1;
        }

        return 2;
    }
}
