using Companion.Engine.Proofs;
using Companion.Engine.Rules;

namespace Companion.Engine.Tests.Rules;

/// <summary>What presenters say of the patterns, checked on many positions. All of it is common practice, no source.</summary>
public sealed class TradeFactTests(ITestOutputHelper output)
{
    // common practice, no source
    [Fact]
    public void A_cell_with_three_candidates_is_never_part_of_an_xy_wing()
    {
        var wings = 0;
        foreach (var (board, _) in SolvingPath.OwnPositions)
        {
            foreach (var wing in RuleCheck.Find(new XYWing(), board))
            {
                Assert.All(wing.Cells, part => Assert.Equal(2, board[part.Cell].Count));
                wings++;
            }
        }

        Assert.True(wings > 100);
    }

    // common practice, no source
    [Fact]
    public void Two_block_claiming_removes_what_claiming_or_a_single_in_the_third_line_removes()
    {
        var found = 0;
        foreach (var (board, _) in SolvingPath.OwnPositions)
        {
            foreach (var twoBlocks in RuleCheck.Find(new TwoBlockClaiming(), board))
            {
                var claims = RuleCheck.Find(new Claiming(), board).Any(claiming => claiming.Removes == twoBlocks.Removes);
                var singles = RuleCheck.Find(new FullHouse(), board).Concat(RuleCheck.Find(new HiddenSingle(), board));
                Assert.True(claims || singles.Any(single => Clears(single, twoBlocks)), twoBlocks.ToString());
                found++;
            }
        }

        Assert.True(found > 100);
    }

    // common practice, no source
    [Theory]
    [InlineData("minimal-with-published-counts.tsv", 20)]
    [InlineData("hard-1465-part.txt", 2)]
    public void Most_xy_wings_have_a_pincer_in_the_block_of_the_pivot_and_few_spread_over_three_blocks(string file, int oneOf)
    {
        var (inBlock, overThree) = (0, 0);
        foreach (var puzzle in OpenData.Puzzles(file, oneOf))
        {
            foreach (var wing in WingsOn(SolvingPath.Easiest(puzzle)))
            {
                var blocks = wing.Cells.Select(part => part.Cell.Block).ToList();
                if (blocks[1] == blocks[0] || blocks[2] == blocks[0])
                    inBlock++;
                else if (blocks.Distinct().Count() == 3)
                    overThree++;
            }
        }

        var all = inBlock + overThree;
        output.WriteLine($"{file}: {all} XY-wings, {100.0 * inBlock / all:F1} % with a pincer in the pivot's block, "
            + $"{100.0 * overThree / all:F1} % over three blocks.");
        Assert.True(all > 500);
        Assert.True(inBlock > overThree);
    }

    private static bool Clears(Deduction single, Deduction other) =>
        single.Houses.First.IsLine
        && single.Digits == other.Digits
        && single.PatternCells.First.Peers.ContainsAll(other.Removes.Cells);

    // Each wing of a puzzle once, however long it stays open.
    private static IEnumerable<Deduction> WingsOn(IEnumerable<Position> path) => path
        .SelectMany(position => RuleCheck.Find(new XYWing(), position.Board))
        .DistinctBy(wing => (wing.PatternCells, wing.Digits));
}
