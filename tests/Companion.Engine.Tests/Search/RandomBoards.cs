using Companion.Engine.Search;

namespace Companion.Engine.Tests.Search;

/// <summary>Boards with no, one or several solutions, from a seed.</summary>
internal static class RandomBoards
{
    /// <summary>
    /// By turns: a puzzle, a puzzle with a wrong digit placed, a puzzle without one of its givens, and such a one with candidates
    /// struck out at random.
    /// </summary>
    public static IEnumerable<Board> From(int seed, int count)
    {
        var random = new Random(seed);
        for (var made = 0; made < count; made++)
        {
            var puzzle = Generator.Make((ulong)random.NextInt64(), new() { Symmetry = random.Next(2) == 0 ? GridSymmetry.HalfTurn : null, Clues = random.Next(20, 35) });
            yield return (made % 4) switch
            {
                0 => puzzle.Board,
                1 => WithWrongDigit(puzzle, random),
                2 => WithoutGiven(puzzle, random),
                _ => WithStrikes(WithoutGiven(puzzle, random), random),
            };
        }
    }

    private static Board WithWrongDigit(Puzzle puzzle, Random random) =>
        puzzle.Board.Place(Pick([.. puzzle.Board.Candidates.Where(candidate => !puzzle.Solution.Holds(candidate))], random));

    private static Board WithoutGiven(Puzzle puzzle, Random random)
    {
        var text = puzzle.Board.ToString().ToCharArray();
        text[Pick([.. puzzle.Board.Givens], random).Index] = BoardText.Blank;
        return Board.Parse(new(text));
    }

    private static Board WithStrikes(Board board, Random random) =>
        board.Remove(CandidateSet.Of([.. board.Candidates.Where(_ => random.Next(12) == 0)]));

    private static T Pick<T>(T[] items, Random random) => items[random.Next(items.Length)];
}
