using Companion.Engine.Proofs;
using Companion.Engine.Rules;
using Companion.Engine.Search;
using Companion.Engine.Tests.Rules;

namespace Companion.Engine.Tests.Corpus;

/// <summary>
/// Puzzles played as somebody plays who writes digits only: each digit of the solution, in an order in which the ladder comes to
/// them, is to be proved from the digits before it.
/// </summary>
public sealed class AttributionCorpusTests(ITestOutputHelper output)
{
    private static readonly Ladder _ladder = ShippedLadder.Ladder.WithoutUniqueness();

    [Fact]
    public void Each_digit_of_1000_puzzles_of_our_own_is_explained_where_the_ladder_solves_them() => Explain(
        [.. Enumerable.Range(5_000, 1_000).Select(seed => Generator.Make((ulong)seed).Board.ToString())], solved: 950);

    [Theory]
    [InlineData("seventeen-clue.txt", 110, 400, 380)]
    [InlineData("minimal-with-published-counts.tsv", 37, 400, 350)]
    [InlineData("hard-1465-part.txt", 6, 150, 50)]
    [InlineData("essay-top95.txt", 2, 48, 30)]
    public void Each_digit_of_a_sample_of_a_list_is_explained_where_the_ladder_solves_the_puzzle(
        string fileName, int oneOf, int most, int solved) => Explain([.. OpenData.Puzzles(fileName, oneOf).Take(most)], solved);

    private void Explain(string[] puzzles, int solved)
    {
        var results = puzzles.AsParallel().AsOrdered().Select(puzzle => Faults(Puzzle.Parse(puzzle))).ToList();
        var past = puzzles.Where((_, place) => results[place] is null).ToList();
        output.WriteLine($"{past.Count} of {puzzles.Length} puzzles are past the ladder.");
        foreach (var puzzle in past)
            output.WriteLine(puzzle);

        Assert.Empty(results.OfType<List<string>>().SelectMany(faults => faults));
        Assert.InRange(puzzles.Length - past.Count, solved, puzzles.Length);
    }

    // What is not explained; null where the ladder does not solve the puzzle.
    private static List<string>? Faults(Puzzle puzzle)
    {
        var boards = Corpus.SolvingPath.Boards(puzzle.Board).ToList();
        if (!boards[^1].IsFull)
            return null;
        var faults = new List<string>();
        var board = puzzle.Board;
        foreach (var cell in boards.SelectMany(after => after.Filled - board.Filled))
        {
            var placed = new Candidate(cell, puzzle.Solution[cell]);
            if (!IsExplained(board, placed))
                faults.Add($"{placed} on {board}");
            board = board.Place(placed);
        }

        return faults;
    }

    private static bool IsExplained(Board board, Candidate placed)
    {
        var target = AttributionTarget.Place(placed);
        if (Attribution.Of(board, target, _ladder) is not Attribution.Proved proved)
            return false;
        foreach (var step in proved.Steps)
        {
            if (!ProofChecker.Check(board, step).Holds)
                return false;
            board = board.Apply(step);
        }

        return target.IsReachedOn(board);
    }
}
