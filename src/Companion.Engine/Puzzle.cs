using Companion.Engine.Search;

namespace Companion.Engine;

/// <summary>A puzzle: a board of givens that has exactly one solution.</summary>
public sealed class Puzzle
{
    private Puzzle(Board board, Solution solution) => (Board, Solution) = (board, solution);

    /// <summary>The board at the start: givens, and the candidates that they leave.</summary>
    public Board Board { get; }

    /// <summary>The only solution. Never sent to an overlay or a viewer.</summary>
    public Solution Solution { get; }

    /// <summary>Validates a draft as a puzzle. All reasons are returned; solutions are counted only on a good board.</summary>
    /// <param name="draft">What came in.</param>
    public static Reading<Puzzle> Read(GridDraft draft)
    {
        var reading = Board.Read(draft);
        if (!reading.IsGood)
            return new(reading.Faults);
        var solutions = SolutionCounter.Find(reading.Value, limit: 2);
        if (solutions.Count == 1)
            return new(new Puzzle(reading.Value, solutions[0]));
        if (solutions.Count == 0)
            return new([new BoardFault.NoSolution()]);
        var cell = CellSet.All.First(cell => solutions[0][cell] != solutions[1][cell]);
        return new([new BoardFault.SeveralSolutions(cell, solutions[0][cell], solutions[1][cell])]);
    }

    /// <summary>Reads a text that is known to be good, as in tests and examples.</summary>
    /// <param name="text">Any layout that <see cref="BoardText.Read"/> takes.</param>
    /// <exception cref="FormatException">The text is not a puzzle; the message holds every reason.</exception>
    public static Puzzle Parse(string text)
    {
        var reading = Read(BoardText.Read(text));
        return reading.Value ?? throw new FormatException(string.Join(' ', reading.Faults.Select(fault => fault.Sentence)));
    }
}
