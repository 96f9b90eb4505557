using Companion.Engine.Proofs;

namespace Companion.Engine.Tests.Rules;

/// <summary>
/// A change of a grid that no rule may notice: cells and digits move, and whatever held before holds of the moved ones.
/// </summary>
/// <param name="Name">What it does.</param>
/// <param name="MoveCell">Where a cell goes.</param>
/// <param name="MoveDigit">What a digit becomes.</param>
internal sealed record Symmetry(string Name, Func<Cell, Cell> MoveCell, Func<Digit, Digit> MoveDigit)
{
    private const string NewNames = "728164953";

    public static IReadOnlyList<Symmetry> All { get; } =
    [
        new("transposed", cell => Cell.Of(cell.Column, cell.Row), digit => digit),
        new("rotated by 90 degrees", cell => Cell.Of(cell.Column, 10 - cell.Row), digit => digit),
        new("relabelled", cell => cell, digit => Digit.Of(NewNames[digit.Index] - '0')),
    ];

    public Board Of(Board board) => Boards.Of(Boards.FilledIn(board).Select(Of), Of(board.Candidates));

    public Deduction Of(Deduction deduction) => new()
    {
        Rule = deduction.Rule,
        Cells = [.. deduction.Cells.Select(part => part with { Cell = MoveCell(part.Cell) })],
        Houses = HouseSet.Of([.. deduction.Houses.Select(Of)]),
        Digits = DigitSet.Of([.. deduction.Digits.Select(MoveDigit)]),
        Links = [.. deduction.Links.Select(Of)],
        Sets = [.. deduction.Sets.Select(Of)],
        Branches = [.. deduction.Branches.Select(Of)],
        RestsOn = Of(deduction.RestsOn),
        Places = Of(deduction.Places),
        Removes = Of(deduction.Removes),
        AssumesOneSolution = deduction.AssumesOneSolution,
    };

    /// <summary>A deduction as text in which the order of cells, of links and of two colours does not count.</summary>
    public static string Unordered(Deduction deduction)
    {
        var cells = InOrder(deduction).OrderBy(part => part.Role).ThenBy(part => part.Cell);
        var links = deduction.Links
            .Select(link => $"{link.IsStrong} {string.Join(' ', new[] { End(link.From, link.FromGroup), End(link.To, link.ToGroup) }.Order())}")
            .Order(StringComparer.Ordinal);
        var sets = deduction.Sets.Select(set => string.Join('+', set)).Order(StringComparer.Ordinal);
        return $"{deduction.Rule} {deduction.Digits} {string.Join(' ', cells)} sets {string.Join(' ', sets)} in {deduction.Houses} "
            + $"links {string.Join(' ', links)} rests on {deduction.RestsOn} "
            + $"places {deduction.Places} removes {deduction.Removes}";
    }

    // With the colour of the first coloured cell as the first.
    private static IEnumerable<PatternCell> InOrder(Deduction deduction) =>
        deduction.Cells.OrderBy(part => part.Cell).FirstOrDefault().Role == Role.SecondColour
            ? deduction.Cells.Select(part => part with
            {
                Role = part.Role == Role.SecondColour ? Role.FirstColour : Role.SecondColour,
            })
            : deduction.Cells;

    // Which cell of a group is nearest may be a matter of the order.
    private static string End(Candidate candidate, CellSet group) =>
        group.IsEmpty ? candidate.ToString() : $"{string.Join('+', group)}={candidate.Digit}";

    private Branch Of(Branch branch) => new(
        Of(branch.Supposed),
        [.. branch.Steps.Select(Of)],
        new(
            branch.End.Cell is { } cell ? MoveCell(cell) : null,
            branch.End.House is { } house ? Of(house) : null,
            DigitSet.Of([.. branch.End.Digits.Select(MoveDigit)])));

    private Link Of(Link link) => new(Of(link.From), Of(link.To), link.IsStrong)
    {
        FromGroup = Of(link.FromGroup),
        ToGroup = Of(link.ToGroup),
    };

    private CellSet Of(CellSet cells) => CellSet.Of([.. cells.Select(MoveCell)]);

    private Candidate Of(Candidate candidate) => new(MoveCell(candidate.Cell), MoveDigit(candidate.Digit));

    private CandidateSet Of(CandidateSet candidates) => CandidateSet.Of([.. candidates.Select(Of)]);

    private House Of(House house) => CellSet.Of([.. house.Cells.Select(MoveCell)]).CommonHouses.First;
}
