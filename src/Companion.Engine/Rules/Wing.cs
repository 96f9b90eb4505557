using Companion.Engine.Proofs;

namespace Companion.Engine.Rules;

/// <summary>The pattern that XY-wing and XYZ-wing share: three cells, not all in one house.</summary>
/// <param name="Pivot">Sees both pincers.</param>
/// <param name="First">The pincer with the candidates xz.</param>
/// <param name="Second">The pincer with the candidates yz.</param>
/// <param name="X">The digit of the pivot and the first pincer.</param>
/// <param name="Y">The digit of the pivot and the second pincer.</param>
/// <param name="Z">The digit of both pincers, which goes elsewhere.</param>
internal readonly record struct Wing(Cell Pivot, Cell First, Cell Second, Digit X, Digit Y, Digit Z)
{
    /// <summary>
    /// The wing as an instance of a rule, by which <see cref="Z"/> goes from the cells <paramref name="gone"/>.
    /// </summary>
    internal Deduction Deduce(RuleId rule, Board board, CellSet gone) => new()
    {
        Rule = rule,
        Cells = [new(Pivot, Role.Pivot), new(First, Role.Pincer), new(Second, Role.Pincer)],
        Digits = DigitSet.Of(X, Y, Z),
        Links = [new(new(Pivot, X), new(First, X), IsStrong: false), new(new(Pivot, Y), new(Second, Y), IsStrong: false)],
        RestsOn = Absent(board, Pivot) | Absent(board, First) | Absent(board, Second),
        Removes = CandidateSet.Of(gone, Z),
    };

    private static CandidateSet Absent(Board board, Cell cell) => CandidateSet.Of(CellSet.Of(cell), ~board[cell]);
}
