namespace Companion.Engine.Proofs;

/// <summary>
/// Decides whether a deduction that assumes one solution follows from what it names and from that assumption. Knows no rule.
/// </summary>
/// <remarks>
/// Four cells in two rows, two columns and two blocks that hold two digits crosswise could exchange them: every row, column and
/// block would keep its digits, and the puzzle would have a second solution, since none of the cells is a given. It looks for a
/// way to fill the named cells against the conclusion as <see cref="ProofChecker"/> does, but no way counts in which the cells of
/// the floor and the roof could be filled otherwise with the same digits in each of their houses.
/// </remarks>
public static class UniquenessChecker
{
    /// <summary>Checks a deduction, given that the puzzle has one solution.</summary>
    /// <param name="board">The board on which it was found.</param>
    /// <param name="deduction">The deduction.</param>
    public static ProofVerdict Check(Board board, Deduction deduction)
    {
        ArgumentNullException.ThrowIfNull(board);
        ArgumentNullException.ThrowIfNull(deduction);
        var exchangeable = CellSet.Empty;
        foreach (var (cell, role) in deduction.Cells)
        {
            if (role is Role.Floor or Role.Roof)
                exchangeable = exchangeable.With(cell);
        }

        return ProofChecker.FaultOf(board, deduction)
            ?? ProofChecker.Search(new NamedWorld(board, deduction, exchangeable), deduction);
    }
}
