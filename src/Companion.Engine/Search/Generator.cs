namespace Companion.Engine.Search;

/// <summary>Makes puzzles of our own: a full grid from a seed, then givens taken away while the solution stays the only one.</summary>
public static class Generator
{
    /// <summary>Makes a puzzle.</summary>
    /// <param name="seed">Any number; equal seeds and options make equal puzzles, on every machine.</param>
    /// <param name="options">What kind; the defaults where null.</param>
    public static Puzzle Make(ulong seed, GeneratorOptions? options = null)
    {
        options ??= new();
        var dice = new Dice(seed);
        return Puzzle.Parse(TakeAway(FillGrid(dice), dice, options));
    }

    // A few digits on an else empty grid may lead nowhere in a way that takes many minutes to find out, one grid in some ten thousand: such a
    // beginning is dropped. Others need a hundredth of this at most.
    private const int MostTurns = 100_000;

    private static string FillGrid(Dice dice)
    {
        while (true)
        {
            if (TryFill(dice) is { } grid)
                return grid;
        }
    }

    // Cells in random order, each with a random digit of those that still lead to a full grid. Every grid can come, but not each
    // is as likely as the next.
    private static string? TryFill(Dice dice)
    {
        var board = Board.Blank;
        foreach (var cell in Shuffled(CellSet.All, dice))
        {
            foreach (var digit in Shuffled(board[cell], dice))
            {
                var next = board.Place(new(cell, digit));
                var isSolvable = SolutionCounter.IsSolvable(next, MostTurns);
                if (isSolvable is null)
                    return null;
                if (isSolvable is false)
                    continue;
                board = next;
                break;
            }
        }

        return board.ToString();
    }

    // One try for each cell is enough: a given that cannot go now cannot go later, when there are fewer. With symmetry a cell is
    // tried again with each that belongs to it, in vain.
    private static string TakeAway(string grid, Dice dice, GeneratorOptions options)
    {
        var givens = grid.ToCharArray();
        var clues = Cell.Count;
        foreach (var cell in Shuffled(CellSet.All, dice))
        {
            if (clues <= options.Clues)
                break;
            var together = options.Symmetry?.Orbit(cell) ?? CellSet.Of(cell);
            if (givens[cell.Index] == BoardText.Blank || clues - together.Count < options.Clues)
                continue;
            foreach (var one in together)
                givens[one.Index] = BoardText.Blank;
            if (SolutionCounter.Count(givens) == 1)
            {
                clues -= together.Count;
                continue;
            }

            foreach (var one in together)
                givens[one.Index] = grid[one.Index];
        }

        return new(givens);
    }

    private static T[] Shuffled<T>(IReadOnlyCollection<T> items, Dice dice)
    {
        var shuffled = items.ToArray();
        dice.Shuffle<T>(shuffled);
        return shuffled;
    }
}
