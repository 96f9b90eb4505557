using Companion.Engine.Proofs;
using Companion.Engine.Rules;

namespace Companion.Engine.Tests.Rules;

/// <summary>
/// Every pattern of almost locked sets that a rule finds is one by definition, and whatever goes by one goes by one that the rule
/// finds, with the fewest cells or links there are.
/// </summary>
public sealed class LiteralSetTests(ITestOutputHelper output)
{
    public static TheoryData<string> ChainsOfSets =>
        ["almost-locked-set-ring", "almost-locked-set-pair", "almost-locked-set-triple"];

    [Theory]
    [MemberData(nameof(ChainsOfSets))]
    public void A_chain_of_sets_is_one_by_definition(string name)
    {
        var chains = 0;
        foreach (var board in Boards(oneOf: 2))
        {
            var (grid, before) = (new LiteralGrid(board), 0);
            foreach (var chain in RuleCheck.Find(Rule(name), board))
            {
                LiteralChain.AssertIsOne(chain, grid, groups: true);
                Assert.Equal(name == "almost-locked-set-triple" ? 3 : 2, chain.Links.Count(link => link.IsStrong));
                Assert.All(chain.Links, link => Assert.True(link.IsStrong || link.From.Digit == link.To.Digit));
                Assert.True(chain.PatternCells.CommonHouses.IsEmpty, "A pattern in one house is a subset.");
                Assert.True(CellsOf(chain) >= before, "Those with the fewest cells come first.");
                before = CellsOf(chain);
                chains++;
            }
        }

        output.WriteLine($"{name}: {chains} chains read link by link.");
        Assert.True(chains > 200);
    }

    [Theory]
    [InlineData("almost-locked-set-pair", 2)]
    [InlineData("almost-locked-set-triple", 3)]
    public void Whatever_goes_by_two_or_three_sets_goes_by_as_few_cells_as_any_have(string name, int sets)
    {
        var (compared, easier) = (0, 0);
        foreach (var board in Boards(oneOf: 50))
        {
            var grid = new LiteralGrid(board);
            var graph = new LiteralSetGraph(grid);
            var ofCells = new LiteralChainGraph(grid, LiteralLinks.Cells);
            var goes = new Dictionary<Candidate, int>();
            foreach (var chain in RuleCheck.Find(Rule(name), board))
            {
                foreach (var candidate in Concluded(chain, board))
                    goes.TryAdd(candidate, CellsOf(chain));
            }

            for (var candidate = 0; candidate < ofCells.Candidates; candidate++)
            {
                var single = ofCells[candidate];
                if (graph.FewestSets(single) != sets)
                    continue;
                var chains = graph.WithFewestCells(single, sets);
                var fewest = chains[0].Sum(set => set.Cells.Count);
                if (fewest <= 3 || ofCells.ShortestWalk(candidate) <= fewest || chains.Exists(chain => IsEasier(chain, grid)))
                    easier++;
                else // It may go beside another, by a ring of three.
                    Assert.InRange(goes.GetValueOrDefault(Of(single)), 1, fewest);
                compared++;
            }
        }

        output.WriteLine($"{name}: {compared} candidates that go, the same in both; {easier} of them left to easier rules.");
        Assert.True(compared - easier > 50);
    }

    [Fact]
    public void Whatever_goes_by_a_ring_of_two_sets_is_found()
    {
        var compared = 0;
        foreach (var board in Boards(oneOf: 20))
        {
            var grid = new LiteralGrid(board);
            var goes = RuleCheck.Find(Rule("almost-locked-set-ring"), board)
                .Aggregate(CandidateSet.Empty, (all, ring) => all | ring.Removes);
            var expected = new LiteralSetGraph(grid).GoByRing().ConvertAll(Of);

            Assert.Equal(expected.Order(), goes);
            compared += expected.Count;
        }

        output.WriteLine($"{compared} candidates that go, the same in both.");
        Assert.True(compared > 100);
    }

    [Fact]
    public void Whatever_goes_by_a_blossom_is_found_with_as_few_links_as_any_has()
    {
        var compared = 0;
        foreach (var board in Boards(oneOf: 50))
        {
            var grid = new LiteralGrid(board);
            var graph = new LiteralSetGraph(grid);
            var goes = new Dictionary<Candidate, int>();
            foreach (var blossom in RuleCheck.Find(Rule("almost-locked-set-blossom"), board))
            {
                foreach (var candidate in blossom.Removes)
                    goes.TryAdd(candidate, blossom.Links.Length);
            }

            foreach (var candidate in board.Candidates)
            {
                var single = new LiteralNode(candidate.Digit.Value, [(candidate.Cell.Row, candidate.Cell.Column)]);
                if (graph.FewestSets(single) is not null)
                    continue; // It may go beside another.
                var fewest = graph.LinksOfBlossom(single) ?? 0;
                Assert.Equal(fewest, goes.GetValueOrDefault(candidate));
                compared += fewest > 0 ? 1 : 0;
            }
        }

        output.WriteLine($"{compared} candidates that go, the same in both.");
        Assert.True(compared > 30);
    }

    // What stands in one house is a subset, a set that comes twice makes a ring with the one between, four cells round a pivot are a
    // wing, and two sets with two links are a ring.
    private static bool IsEasier(List<LiteralSet> chain, LiteralGrid grid)
    {
        var cells = chain.SelectMany(set => set.Cells).Distinct().ToList();
        return LiteralGrid.Houses.Exists(house => cells.TrueForAll(house.Has))
            || chain.Distinct().Count() < chain.Count
            || (chain.Count == 2 && cells.Count == 4 && cells.Exists(pivot => cells.TrueForAll(cell => cell == pivot || LiteralGrid.See(cell, pivot))))
            || (chain.Count == 2 && LiteralSetGraph.Links(chain[0], chain[1], grid).Count > 1);
    }

    private static int CellsOf(Deduction chain) => chain.Sets.Sum(set => set.Count);

    private static Candidate Of(LiteralNode single) =>
        new(Cell.Of(single.Cells[0].Row, single.Cells[0].Column), Digit.Of(single.Digit));

    private static CandidateSet Concluded(Deduction deduction, Board board) => deduction.Places.Aggregate(
        deduction.Removes,
        (all, placed) => all | (board.Candidates - board.Place(placed).Candidates).Without(placed));

    private static IEnumerable<Board> Boards(int oneOf) =>
        SolvingPath.OwnPositions.Where((_, place) => place % oneOf == 0).Select(position => position.Board);

    private static IRule Rule(string name) => Ladder.Standard[new(name)].Rule;
}
