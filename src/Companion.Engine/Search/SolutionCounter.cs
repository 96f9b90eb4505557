namespace Companion.Engine.Search;

/// <summary>Counts and finds the ways to fill a board by exhaustive search: the uniqueness check.</summary>
public static class SolutionCounter
{
    /// <summary>How many solutions the board has, counted up to a limit.</summary>
    /// <param name="board">The board; only its standing candidates are used.</param>
    /// <param name="limit">Where counting stops; 2 answers "exactly one?".</param>
    /// <returns>0 to <paramref name="limit"/>.</returns>
    /// <exception cref="ArgumentOutOfRangeException"><paramref name="limit"/> is less than 1.</exception>
    public static int Count(Board board, int limit = 2) => Find(board, limit).Count;

    /// <summary>The solutions of the board, up to a limit.</summary>
    /// <param name="board">The board; only its standing candidates are used.</param>
    /// <param name="limit">How many are wanted at most.</param>
    /// <exception cref="ArgumentOutOfRangeException"><paramref name="limit"/> is less than 1.</exception>
    public static IReadOnlyList<Solution> Find(Board board, int limit = 2)
    {
        ArgumentNullException.ThrowIfNull(board);
        ArgumentOutOfRangeException.ThrowIfLessThan(limit, 1);
        var found = new List<Solution>();
        Walk(board, limit, found);
        return found;
    }

    private static void Walk(Board board, int limit, List<Solution> found)
    {
        if (board.IsFull)
        {
            found.Add(new Solution(board.ToString()));
            return;
        }

        if (!board.DeadCells.IsEmpty)
            return;
        var cell = board.Open.MinBy(cell => board[cell].Count);
        foreach (var digit in board[cell])
        {
            Walk(board.Place(new(cell, digit)), limit, found);
            if (found.Count >= limit)
                return;
        }
    }
}
