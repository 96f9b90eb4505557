using Companion.Engine.Search;

namespace Companion.Engine.Tests.Corpus;

/// <summary>Part of G. Royle's collection of puzzles with 17 clues (University of Western Australia, 2005-2009).</summary>
public sealed class SeventeenClueTests
{
    private const string FileName = "seventeen-clue.txt";

    [Fact]
    public void Each_puzzle_has_17_clues_and_one_solution()
    {
        var lines = OpenData.Lines(FileName);

        Assert.Equal(44_236, lines.Length);
        Assert.All(lines, line => Assert.Equal(17, line.Count(character => character is >= '1' and <= '9')));
        Assert.Equal(lines.Length, lines.AsParallel().Count(line => SolutionCounter.Count(line) == 1));
    }

    [Fact]
    public void Each_puzzle_is_minimal()
    {
        var lines = OpenData.Lines(FileName);

        Assert.Equal(lines.Length, lines.AsParallel().Count(line => Minimality.IsMinimal(Puzzle.Parse(line))));
    }

    [Fact]
    public void No_band_or_stack_has_fewer_than_3_clues_and_few_puzzles_have_one_with_3()
    {
        var fewest = OpenData.Lines(FileName).AsParallel().Select(FewestCluesInAChute).ToArray();

        // Source: Lin, Wu, Wei, ICGA Journal 36(3), 2013: 95 of the whole collection's 49,151, and none with fewer.
        Assert.Equal(3, fewest.Min());
        Assert.InRange(fewest.Count(clues => clues == 3), 1, 95);
    }

    private static int FewestCluesInAChute(string line)
    {
        var givens = Board.Parse(line).Givens;
        return Enumerable.Range(0, Chute.Count).Min(chute => (givens & Chute.At(chute).Cells).Count);
    }
}
