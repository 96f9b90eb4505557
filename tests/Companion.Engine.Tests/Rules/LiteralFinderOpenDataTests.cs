namespace Companion.Engine.Tests.Rules;

/// <summary>Every rule finds exactly what its literal finder finds on the ways through open puzzles.</summary>
public sealed class LiteralFinderOpenDataTests(ITestOutputHelper output)
{
    [Theory]
    [InlineData("hard-1465-part.txt", 60)]
    [InlineData("hardest-375-part.txt", 20)]
    [InlineData("seventeen-clue.txt", 4_000)]
    [InlineData("minimal-with-published-counts.tsv", 1_000)]
    public void The_rules_and_their_literal_finders_agree(string file, int oneOf)
    {
        var boards = OpenData.Puzzles(file, oneOf).SelectMany(SolvingPath.Easiest).Select(position => position.Board).ToList();
        foreach (var rule in LiteralFinders.All.Keys)
            output.WriteLine(LiteralComparison.Compare(rule, boards, atLeast: RarePositions.Has(rule) ? 0 : 1));
    }
}
