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
    /// <summary>The almost locked sets of the pattern.</summary>
    internal ImmutableArray<CellSet> Sets { get; init; } = [];

    /// <summary>
    /// What follows, where the pattern is shown without it: chains and sets may well conclude about their own cells. Where one
    /// solution is assumed, all candidates of the cell: the one that is missing would tell.
    /// </summary>
    private CandidateSet Hidden { get; init; }

    /// <summary>The whole pattern; for a single that is the conclusion too.</summary>
    internal static Pattern Of(Deduction deduction) =>
        new(deduction.Cells, deduction.Digits, deduction.Houses, CoverOf(deduction), deduction.Links) { Sets = deduction.Sets };

    /// <summary>The pattern with nothing in it that follows.</summary>
    internal static Pattern WithoutConclusion(Deduction deduction)
    {
        var concluded = deduction.Places | deduction.Removes;
        var pattern = Of(deduction) with
        {
            Links = [.. deduction.Links.Where(link => (link.Ends & concluded).IsEmpty)],
            Hidden = deduction.AssumesOneSolution ? CandidateSet.Of(concluded.Cells, DigitSet.All) : concluded,
        };
        if (deduction.Cells[0].Role != Role.Single)
            return pattern;

        // Candidates gone from other cells: the argument is where in a house the digit can go, and the cell is the answer.
        // Otherwise it is what the cell can be, and the digit is the answer.
        return (deduction.RestsOn.Cells - deduction.PatternCells).IsEmpty
            ? pattern with { Digits = DigitSet.Empty }
            : pattern with { Cells = [] };
    }

    /// <summary>
    /// The candidates of the pattern that stand: the ends of its links in the cells of a chain, the digit of an X-wing in the cells
    /// through which it links, the digits of the pattern in all other cells.
    /// </summary>
    internal CandidateSet StandingOn(Board board)
    {
        var (linked, ofFish) = (CandidateSet.Empty, DigitSet.Empty);
        foreach (var link in Links)
        {
            linked |= link.Ends;
            ofFish = link.IsThroughFish ? ofFish.With(link.From.Digit) : ofFish;
        }

        foreach (var (cell, role) in Cells)
        {
            if (!IsOfChain(role))
                linked |= CandidateSet.Of(CellSet.Of(cell), role == Role.Base && !ofFish.IsEmpty ? ofFish : Digits);
        }

        return (board.Candidates & linked) - Hidden;
    }

    /// <summary>The cells in the order in which they are said, with those of a group taken together.</summary>
    internal List<CellSet> Stops
    {
        get
        {
            var (stops, said) = (new List<CellSet>(), CellSet.Empty);
            foreach (var (cell, _) in Cells)
            {
                if (said.Contains(cell))
                    continue;
                var stop = Links.Select(link => link.FromGroup).Concat(Links.Select(link => link.ToGroup))
                    .FirstOrDefault(group => group.Contains(cell) && !group.Overlaps(said), CellSet.Of(cell));
                stops.Add(stop);
                said |= stop;
            }

            return stops;
        }
    }

    private static bool IsOfChain(Role role) => role is Role.ChainEnd or Role.Chain or Role.Start;

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
