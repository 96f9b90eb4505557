namespace Companion.Engine.Rules;

/// <summary>
/// Four cells in two rows, two columns and two blocks. Two digits that fill them crosswise could be exchanged without a change to
/// any house, so that the puzzle would have a second solution unless one of the cells is a given.
/// </summary>
/// <param name="TopLeft">The corner in the upper row and the left column.</param>
/// <param name="TopRight">The corner in the upper row and the right column.</param>
/// <param name="BottomLeft">The corner in the lower row and the left column.</param>
/// <param name="BottomRight">The corner in the lower row and the right column.</param>
internal readonly record struct Rectangle(Cell TopLeft, Cell TopRight, Cell BottomLeft, Cell BottomRight)
{
    /// <summary>All of them, by rows, then by columns.</summary>
    internal static readonly Rectangle[] All = [.. Make()];

    /// <summary>The corners as a set.</summary>
    internal CellSet Cells => CellSet.Of(TopLeft, TopRight, BottomLeft, BottomRight);

    /// <summary>A corner: 0 and 1 in the upper row, 2 and 3 in the lower one, odd ones in the right column.</summary>
    internal Cell this[int corner] => corner switch { 0 => TopLeft, 1 => TopRight, 2 => BottomLeft, _ => BottomRight };

    /// <summary>
    /// Whether exactly two digits stand in all four corners, which are open then, and the corners in which no other digit stands:
    /// the floor.
    /// </summary>
    internal bool HasPair(Board board, out DigitSet pair, out CellSet floor)
    {
        pair = board[TopLeft] & board[TopRight] & board[BottomLeft] & board[BottomRight];
        floor = CellSet.Empty;
        if (pair.Count != 2)
            return false;
        for (var corner = 0; corner < 4; corner++)
        {
            if (board[this[corner]] == pair)
                floor = floor.With(this[corner]);
        }

        return !floor.IsEmpty;
    }

    private static IEnumerable<Rectangle> Make()
    {
        for (var top = 1; top <= 9; top++)
        {
            for (var bottom = top + 1; bottom <= 9; bottom++)
            {
                for (var left = 1; left <= 9; left++)
                {
                    for (var right = left + 1; right <= 9; right++)
                    {
                        // In two blocks where just one of both pairs of lines lies in a chute.
                        if ((top - 1) / 3 == (bottom - 1) / 3 == ((left - 1) / 3 == (right - 1) / 3))
                            continue;
                        var (topLeft, topRight) = (Cell.Of(top, left), Cell.Of(top, right));
                        yield return new(topLeft, topRight, Cell.Of(bottom, left), Cell.Of(bottom, right));
                    }
                }
            }
        }
    }
}
