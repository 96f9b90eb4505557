using Companion.Engine.Rules;
using Companion.Engine.Search;
using Companion.Engine.Tests.Search;

namespace Companion.Engine.Tests.Corpus;

/// <summary>
/// Whatever a rule says of a puzzle must hold in its only solution. The solution comes from a constraint solver that knows no rule.
/// </summary>
public sealed class TruthTests
{
    [Fact]
    public void Every_deduction_on_the_way_through_our_own_puzzles_holds_in_their_solution()
    {
        AssertTrue([.. Enumerable.Range(1_000, 40).Select(seed => Generator.Make((ulong)seed).Board.ToString())]);
    }

    [Theory]
    [InlineData("seventeen-clue.txt", 60)]
    [InlineData("hard-1465-part.txt", 60)]
    [InlineData("minimal-with-published-counts.tsv", 60)]
    public void Every_deduction_on_the_way_through_a_sample_of_a_list_holds_in_the_solution(string fileName, int puzzles)
    {
        var lines = OpenData.Lines(fileName).Where(line => line[0] is '.' or (>= '0' and <= '9')).ToArray();
        AssertTrue([.. new Random(17).GetItems(lines, puzzles).Select(line => line[..Cell.Count])]);
    }

    private static void AssertTrue(string[] puzzles)
    {
        var wrong = puzzles.AsParallel().SelectMany(Wrong).ToArray();
        Assert.Empty(wrong);
    }

    private static IEnumerable<string> Wrong(string puzzle)
    {
        var solution = ConstraintSolver.Solutions(Board.Parse(puzzle), limit: 2).Single();
        return
            from board in SolvingPath.Boards(Board.Parse(puzzle))
            from deduction in Ladder.Whole.Scan(board)
            where !deduction.Places.All(IsTrue) || deduction.Removes.Any(IsTrue)
            select $"{puzzle}: {deduction}";

        bool IsTrue(Candidate candidate) => solution[candidate.Cell.Index] - '0' == candidate.Digit.Value;
    }
}
