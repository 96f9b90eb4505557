using System.Collections.Immutable;

namespace Companion.Engine.Proofs;

/// <summary>What a grade 3 hint shows of a deduction: the pattern without the conclusion.</summary>
internal sealed record Pattern(
    ImmutableArray<PatternCell> Cells,
    DigitSet Digits,
    HouseSet Houses,
    HouseSet Cover,
    ImmutableArray<Link> Links)
{
    /// <summary>The whole pattern; for a single that is the conclusion too.</summary>
    internal static Pattern Of(Deduction deduction) =>
        new(deduction.Cells, deduction.Digits, deduction.Houses, CoverOf(deduction), deduction.Links);

    /// <summary>The pattern with nothing in it that follows.</summary>
    internal static Pattern WithoutConclusion(Deduction deduction)
    {
        var concluded = deduction.Places | deduction.Removes;
        var pattern = Of(deduction) with
        {
            Links = [.. deduction.Links.Where(link => !concluded.Contains(link.From) && !concluded.Contains(link.To))],
        };
        if ((concluded & CandidateSet.Of(deduction.PatternCells, deduction.Digits)).IsEmpty)
            return pattern;

        // Candidates gone from other cells: the argument is where in a house the digit can go, and the cell is the answer.
        // Otherwise it is what the cell can be, and the digit is the answer.
        return (deduction.RestsOn.Cells - deduction.PatternCells).IsEmpty
            ? pattern with { Digits = DigitSet.Empty }
            : pattern with { Cells = [] };
    }

    /// <summary>The digits of the pattern where they stand as candidates in its cells.</summary>
    internal CandidateSet StandingOn(Board board) =>
        board.Candidates & CandidateSet.Of(CellSet.Of([.. Cells.Select(cell => cell.Cell)]), Digits);

    /// <summary>The cells of the pattern that do this, in the order in which they are said.</summary>
    internal List<Cell> In(Role role) => [.. Cells.Where(cell => cell.Role == role).Select(cell => cell.Cell)];

    // As many houses of one other kind as the named ones, through all cells of the pattern but fins and all that is removed.
    private static HouseSet CoverOf(Deduction deduction)
    {
        if (deduction.Houses.IsEmpty || deduction.Cells[0].Role is not (Role.Locked or Role.Base))
            return HouseSet.Empty;
        var cells = CellSet.Of([.. deduction.Cells.Where(part => part.Role != Role.Fin).Select(part => part.Cell)]);
        foreach (var kind in Enum.GetValues<HouseKind>())
        {
            if (deduction.Houses.Any(house => house.Kind == kind))
                continue;
            var through = HouseSet.Empty;
            var covered = CellSet.Empty;
            foreach (var house in cells.SelectMany(cell => cell.Houses).Where(house => house.Kind == kind))
            {
                through = through.With(house);
                covered |= house.Cells;
            }

            if (through.Count == deduction.Houses.Count && covered.ContainsAll(deduction.Removes.Cells))
                return through;
        }

        return HouseSet.Empty;
    }
}
