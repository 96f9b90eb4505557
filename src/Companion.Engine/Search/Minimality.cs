namespace Companion.Engine.Search;

/// <summary>Whether a puzzle has givens to spare.</summary>
public static class Minimality
{
    /// <summary>Whether no given can be left out: without any one of them there would be several solutions.</summary>
    /// <param name="puzzle">The puzzle; only its givens are looked at.</param>
    public static bool IsMinimal(Puzzle puzzle) => RedundantGivens(puzzle).IsEmpty;

    /// <summary>
    /// The givens that follow from the others. Each of them can be left out, which does not say that two of them can be at once.
    /// </summary>
    /// <param name="puzzle">The puzzle; only its givens are looked at.</param>
    public static CellSet RedundantGivens(Puzzle puzzle)
    {
        ArgumentNullException.ThrowIfNull(puzzle);
        Span<char> givens = stackalloc char[Cell.Count];
        givens.Fill(BoardText.Blank);
        foreach (var cell in puzzle.Board.Givens)
            givens[cell.Index] = (char)('0' + puzzle.Solution[cell].Value);

        var redundant = CellSet.Empty;
        foreach (var cell in puzzle.Board.Givens)
        {
            var given = givens[cell.Index];
            givens[cell.Index] = BoardText.Blank;
            if (SolutionCounter.Count(givens) == 1)
                redundant = redundant.With(cell);
            givens[cell.Index] = given;
        }

        return redundant;
    }
}
