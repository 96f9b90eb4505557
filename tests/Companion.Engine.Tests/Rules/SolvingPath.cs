using Companion.Engine.Rules;

namespace Companion.Engine.Tests.Rules;

/// <summary>
/// Ways through a puzzle, one deduction at a time. Where the ladder is stuck, a digit of the solution is placed in a cell chosen
/// by the seed, so that hard puzzles are gone through to the end.
/// </summary>
internal static class SolvingPath
{
    private static readonly Ladder _rules = Ladder.Whole.WithoutLastResorts();

    private static readonly Lazy<IReadOnlyList<Position>> _own = new(() => [.. OwnPuzzles.All.SelectMany(Several)]);

    /// <summary>Several thousand positions on three ways through each of our own puzzles.</summary>
    public static IReadOnlyList<Position> OwnPositions => _own.Value;

    /// <summary>The way of the presenter: always the first deduction of the easiest rule that is no last resort.</summary>
    public static IEnumerable<Position> Easiest(string puzzle) => Walk(puzzle, seed: 1, (board, _) =>
        _rules.Easiest(board) is { } easiest ? board.Apply(easiest) : null);

    /// <summary>Any open deduction at each step, which leads through boards where easy ones are left for long.</summary>
    public static IEnumerable<Position> Wandering(string puzzle, int seed) => Walk(puzzle, seed, (board, random) =>
    {
        var open = RuleCheck.Scan(board);
        return open.Count > 0 ? board.Apply(open[random.Next(open.Count)]) : null;
    });

    private static IEnumerable<Position> Several(string puzzle) =>
        [.. Easiest(puzzle), .. Wandering(puzzle, seed: 2), .. Wandering(puzzle, seed: 3)];

    private static IEnumerable<Position> Walk(string text, int seed, Func<Board, Random, Board?> next)
    {
        var random = new Random(seed);
        var puzzle = Puzzle.Parse(text);
        for (var board = puzzle.Board; !board.IsFull; board = next(board, random) ?? Jump(board, puzzle.Solution, random))
            yield return new(board, puzzle.Solution);
    }

    private static Board Jump(Board board, Solution solution, Random random)
    {
        var cell = board.Open.ElementAt(random.Next(board.Open.Count));
        return board.Place(new(cell, solution[cell]));
    }
}
