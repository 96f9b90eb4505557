using Companion.Engine.Search;

namespace Companion.Engine.Tests.Corpus;

public sealed class HardListsTests
{
    [Theory]
    [InlineData("hardest-375-part.txt", 300)] // a community list, 2011
    [InlineData("hard-1465-part.txt", 1_172)] // a community list
    [InlineData("essay-hardest11.txt", 11)] // P. Norvig, "Solving Any Sudoku Puzzle" (2006, 2021), as the next two
    [InlineData("essay-top95.txt", 95)]
    [InlineData("essay-easy50.txt", 50)]
    [InlineData("rrn-sample36.txt", 36)] // R. Palm, U. Paquet, O. Winther, "Recurrent Relational Networks" (2018)
    [InlineData("general-solver-examples.txt", 7)] // the manuals of GLPK, SWI-Prolog and OR-Tools, and textbook code
    public void Each_puzzle_of_a_published_list_has_one_solution(string fileName, int puzzles)
    {
        var counts = OpenData.Lines(fileName).AsParallel().Select(line => SolutionCounter.Count(line)).ToArray();

        Assert.Equal(Enumerable.Repeat(1, puzzles), counts);
    }
}
