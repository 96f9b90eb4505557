using Companion.Engine.Proofs;

namespace Companion.Engine.Rules;

/// <summary>
/// Empty rectangle. Finds a block that keeps a digit to one row and one column of it, and a strong link outside with one end in
/// that row or column; the digit goes from the cell where the other end's line meets the other of the two.
/// </summary>
/// <remarks>
/// <para>
/// Why it holds: if the digit stood in that cell, the far end of the link would be false and the near end true, and the block
/// would have lost both its row and its column.
/// </para>
/// <code>
/// . . . | . . . | . . .      Block 1 has the digit only in row 2 and column 3 (o);
/// o o o | . . . | p . .      column 7 has only the places p and q.
/// . . o | . . . | . . .      The digit goes from -.
/// ------+-------+------
/// . . . | . . . | . . .
/// . . - | . . . | q . .
/// </code>
/// <para>
/// All of them: one for each block, digit and link, by block, then by digit, then by the line of the link (rows, columns). The
/// block has places in the row off the column and in the column off the row; a block with two places is left to
/// <see cref="TwoStrongLinks"/>. It rests on the digit's absence from the open cells of the block off the row and the column, and
/// from the other open cells of the line of the link.
/// </para>
/// <para>Source: common practice.</para>
/// </remarks>
public sealed class EmptyRectangle : IRule
{
    /// <inheritdoc/>
    public RuleId Id { get; } = new("empty-rectangle");

    /// <inheritdoc/>
    public void Find(Board board, Findings found)
    {
        foreach (var block in HouseSet.Blocks)
        {
            foreach (var digit in Digit.All)
            {
                if (TryCross(block, board[digit] & block.Cells, out var row, out var column)
                    && !(Find(block, digit, near: column, far: row, board, found)
                        && Find(block, digit, near: row, far: column, board, found)))
                    return;
            }
        }
    }

    // The row and the column of the block that hold all places, but neither alone. Three places or more leave no choice.
    private static bool TryCross(House block, CellSet places, out House row, out House column)
    {
        (row, column) = (default, default);
        if (places.Count < 3)
            return false;
        for (var place = 0; place < 9; place++)
        {
            var centre = block.CellAt(place);
            (row, column) = (House.Row(centre.Row), House.Column(centre.Column));
            if ((row.Cells | column.Cells).ContainsAll(places) && !row.Cells.ContainsAll(places)
                && !column.Cells.ContainsAll(places))
                return true;
        }

        return false;
    }

    // Links that start in one line of the cross, in lines parallel to the other.
    private bool Find(House block, Digit digit, House near, House far, Board board, Findings found)
    {
        foreach (var start in (board[digit] & near.Cells) - block.Cells)
        {
            var line = House.Of(far.Kind, far.Kind == HouseKind.Row ? start.Row : start.Column);
            var places = board[digit] & line.Cells;
            if (places.Count != 2)
                continue;
            var end = places.Without(start).First;
            var gone = (board[digit] & far.Cells & end.Peers) - block.Cells;
            if (!gone.IsEmpty && !found.Add(Deduce(block, digit, near.Cells | far.Cells, start, end, line, board, gone)))
                return false;
        }

        return true;
    }

    private Deduction Deduce(
        House block, Digit digit, CellSet cross, Cell start, Cell end, House line, Board board, CellSet gone) => new()
        {
            Rule = Id,
            Cells = PatternCell.Each(
                (Role.Cross, board[digit] & block.Cells), (Role.Between, CellSet.Of(start)), (Role.End, CellSet.Of(end))),
            Houses = HouseSet.Of(block, line),
            Digits = DigitSet.Of(digit),
            Links = [new(new(start, digit), new(end, digit), IsStrong: true)],
            RestsOn = CandidateSet.Of((board.Open & (block.Cells - cross | line.Cells)) - CellSet.Of(start, end), digit),
            Removes = CandidateSet.Of(gone, digit),
        };
}
