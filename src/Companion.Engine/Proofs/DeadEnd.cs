namespace Companion.Engine.Proofs;

/// <summary>What cannot be: a cell for which no digit is left, or a house in which a digit has no place.</summary>
/// <param name="Cell">The cell; null where it is a house.</param>
/// <param name="House">The house; null where it is a cell.</param>
/// <param name="Digits">The digit that has no place, or those that stood in the cell before anything was supposed.</param>
public readonly record struct DeadEnd(Cell? Cell, House? House, DigitSet Digits)
{
    /// <summary>Every dead end of a board that came about from another by supposing something.</summary>
    internal static IEnumerable<DeadEnd> FindAll(Board real, Board board)
    {
        foreach (var cell in board.DeadCells)
            yield return new(cell, null, real[cell]);
        foreach (var house in HouseSet.All)
        {
            foreach (var digit in board.MissingFrom(house))
            {
                if (!board[digit].Overlaps(house.Cells))
                    yield return new(null, house, DigitSet.Of(digit));
            }
        }
    }

    /// <summary>Whether the cell is filled, or the digit placed in the house.</summary>
    internal bool IsMadeOn(Board board) =>
        Cell is { } cell ? board.Filled.Contains(cell) : !board.MissingFrom(House!.Value).Contains(Digits.First);

    /// <summary>What stood there before anything was supposed.</summary>
    internal CandidateSet StoodOn(Board real) => Cell is { } cell
        ? CandidateSet.Of(CellSet.Of(cell), real[cell])
        : CandidateSet.Of(real[Digits.First] & House!.Value.Cells, Digits.First);
}
