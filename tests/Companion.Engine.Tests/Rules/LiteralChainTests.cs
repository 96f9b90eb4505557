using Companion.Engine.Proofs;
using Companion.Engine.Rules;

namespace Companion.Engine.Tests.Rules;

/// <summary>
/// Every chain that a rule finds is one by definition, and every candidate that goes by some short chain goes by a shortest one that
/// the rule finds.
/// </summary>
public sealed class LiteralChainTests(ITestOutputHelper output)
{
    private const LiteralLinks Plain = LiteralLinks.Cells | LiteralLinks.Houses | LiteralLinks.WithinCells;

    // The rules to which grouped chain leaves what goes by two links of one digit, if they find it.
    private static readonly string[] _ofTwoLinksOfOneDigit =
    [
        "full-house", "hidden-single", "naked-single", "pointing", "claiming", "two-block-claiming", "x-wing", "two-strong-links", "empty-rectangle",
        "finned-x-wing",
    ];

    public static TheoryData<string> Rules => [.. ChainRules.All.Except([.. ChainRules.BySets, .. ChainRules.Forcing]), "almost-locked-set-chain"];

    [Theory]
    [MemberData(nameof(Rules))]
    public void A_chain_is_one_by_definition(string name)
    {
        var chains = 0;
        foreach (var board in Boards(oneOf: 2))
        {
            var grid = new LiteralGrid(board);
            var before = 0;
            var concluded = CandidateSet.Empty;
            foreach (var chain in RuleCheck.Find(Rule(name), board))
            {
                LiteralChain.AssertIsOne(chain, grid, groups: name is "grouped-chain" or "almost-locked-set-chain");
                var length = chain.Links.Count(link => link.IsStrong);
                Assert.True(length >= before, "The shorter chains come first.");
                Assert.False(concluded.ContainsAll(Concluded(chain, board)), "Something goes that did not go before.");
                before = length;
                concluded |= Concluded(chain, board);
                chains++;
            }
        }

        output.WriteLine($"{name}: {chains} chains read link by link.");
        Assert.True(chains > 200);
    }

    [Theory]
    [InlineData("single-digit-chain", 4, 1)]
    [InlineData("xy-chain", 5, 2)]
    [InlineData("continuous-loop", 3, 20)]
    [InlineData("alternating-inference-chain", 3, 20)]
    [InlineData("grouped-chain", 3, 45)]
    [InlineData("almost-locked-set-chain", 2, 30)]
    public void Whatever_goes_by_a_short_chain_goes_by_a_shortest_one(string name, int mostStrongLinks, int oneOf)
    {
        var (compared, comesBack) = (0, 0);
        foreach (var board in Boards(oneOf))
        {
            var grid = new LiteralGrid(board);
            var (graph, shortest, walk, isWanted) = Expectation(name, grid, mostStrongLinks);
            var actual = LengthsOf(RuleCheck.Find(Rule(name), board), board);
            for (var candidate = 0; candidate < graph.Candidates; candidate++)
            {
                if (walk(candidate) is not { } fewest || fewest > mostStrongLinks || !isWanted(candidate, fewest))
                    continue;
                if (shortest(candidate) != fewest)
                {
                    comesBack++;
                    continue;
                }

                var key = Of(graph[candidate]);
                if (actual.GetValueOrDefault(key) != fewest && name == "almost-locked-set-chain" && LiteralSet.OverfillsHouse(graph[candidate], grid))
                    continue; // Its shortest chain may lie in one house.
                Assert.True(actual.TryGetValue(key, out var length), $"{key} goes by {fewest} strong links.\n{board}\n{board.Candidates}");
                Assert.Equal(fewest, length);
                compared++;
            }
        }

        output.WriteLine($"{name}: {compared} candidates that go, the same in both; {comesBack} by chains that come back only.");
        Assert.True(compared > (name == "almost-locked-set-chain" ? 20 : 50));
    }

    [Fact]
    public void Whatever_goes_by_two_strong_links_of_one_digit_goes_by_grouped_chain_or_by_an_easier_rule()
    {
        var (rules, compared) = (_ofTwoLinksOfOneDigit.Select(Rule).ToList(), 0);
        foreach (var start in Boards(oneOf: 4))
        {
            var board = start;
            while (rules.SelectMany(rule => RuleCheck.Find(rule, board)).FirstOrDefault() is { } easy)
                board = board.Apply(easy);
            var graph = new LiteralChainGraph(new(board), LiteralLinks.Houses | LiteralLinks.Groups);
            var goes = RuleCheck.Find(Rule("grouped-chain"), board)
                .Aggregate(CandidateSet.Empty, (all, chain) => all | Concluded(chain, board));
            foreach (var candidate in Enumerable.Range(0, graph.Candidates).Where(candidate => graph.ShortestWalk(candidate) <= 2))
            {
                Assert.True(goes.Contains(Of(graph[candidate])), $"{Of(graph[candidate])} goes.\n{board}\n{board.Candidates}");
                compared++;
            }
        }

        output.WriteLine($"{compared} candidates.");
        Assert.True(compared > 10);
    }

    private static (LiteralChainGraph Graph, Func<int, int?> Shortest, Func<int, int?> Walk, Func<int, int, bool> IsWanted)
        Expectation(string name, LiteralGrid grid, int most)
    {
        var ofOneDigit = new Lazy<LiteralChainGraph>(() => new(grid, LiteralLinks.Houses));
        var ofCells = new Lazy<LiteralChainGraph>(() => new(grid, LiteralLinks.Cells));
        var plain = new Lazy<LiteralChainGraph>(() => new(grid, Plain));
        return name switch
        {
            "single-digit-chain" => (ofOneDigit.Value, candidate => ofOneDigit.Value.Shortest(candidate, most), ofOneDigit.Value.ShortestWalk,
                (candidate, fewest) => fewest >= 3 && !IsLoop(candidate, fewest)),
            "xy-chain" => (ofCells.Value, candidate => ofCells.Value.Shortest(candidate, most), ofCells.Value.ShortestWalk,
                (candidate, fewest) => fewest >= 4 && !IsLoop(candidate, fewest)),
            "continuous-loop" => (plain.Value, candidate => plain.Value.ShortestLoop(candidate, most), plain.Value.ShortestLoopWalk,
                (_, fewest) => fewest >= 3),
            "grouped-chain" => ExpectGroups(grid, plain.Value, most),
            "almost-locked-set-chain" => ExpectSets(grid, most),
            _ => (plain.Value, candidate => plain.Value.Shortest(candidate, most), plain.Value.ShortestWalk,
                (candidate, fewest) => !(ofOneDigit.Value.ShortestWalk(candidate) <= fewest)
                    && !(ofCells.Value.ShortestWalk(candidate) <= fewest)
                    && !IsLoop(candidate, fewest)),
        };

        bool IsLoop(int candidate, int fewest) => plain.Value.ShortestLoopWalk(candidate) <= fewest;
    }

    // Two links of one digit are another test's.
    private static (LiteralChainGraph Graph, Func<int, int?> Shortest, Func<int, int?> Walk, Func<int, int, bool> IsWanted)
        ExpectGroups(LiteralGrid grid, LiteralChainGraph plain, int most)
    {
        var grouped = new LiteralChainGraph(grid, Plain | LiteralLinks.Groups);
        var ofOneDigit = new LiteralChainGraph(grid, LiteralLinks.Houses | LiteralLinks.Groups);
        return (grouped, candidate => grouped.Shortest(candidate, most), grouped.ShortestWalk,
            (candidate, fewest) => !(plain.ShortestWalk(candidate) <= fewest) && !(ofOneDigit.ShortestWalk(candidate) <= 2));
    }

    private static (LiteralChainGraph Graph, Func<int, int?> Shortest, Func<int, int?> Walk, Func<int, int, bool> IsWanted)
        ExpectSets(LiteralGrid grid, int most)
    {
        var withSets = new LiteralChainGraph(grid, Plain | LiteralLinks.Groups | LiteralLinks.Sets);
        var grouped = new LiteralChainGraph(grid, Plain | LiteralLinks.Groups);
        var ofSets = new LiteralChainGraph(grid, LiteralLinks.Cells | LiteralLinks.Sets);
        return (withSets, candidate => withSets.Shortest(candidate, most), withSets.ShortestWalk,
            (candidate, fewest) => !(grouped.ShortestWalk(candidate) <= fewest) && !(ofSets.ShortestWalk(candidate) <= fewest));
    }

    private static Candidate Of(LiteralNode single) =>
        new(Cell.Of(single.Cells[0].Row, single.Cells[0].Column), Digit.Of(single.Digit));

    // By candidate that goes: the strong links of the shortest chain found.
    private static Dictionary<Candidate, int> LengthsOf(Findings chains, Board board)
    {
        var lengths = new Dictionary<Candidate, int>();
        foreach (var chain in chains)
        {
            foreach (var candidate in Concluded(chain, board))
                lengths.TryAdd(candidate, chain.Links.Count(link => link.IsStrong));
        }

        return lengths;
    }

    // What goes, at once or beside the digit that is placed.
    private static CandidateSet Concluded(Deduction deduction, Board board) => deduction.Places.Aggregate(
        deduction.Removes,
        (all, placed) => all | (board.Candidates - board.Place(placed).Candidates).Without(placed));

    private static IEnumerable<Board> Boards(int oneOf) =>
        SolvingPath.OwnPositions.Where((_, place) => place % oneOf == 0).Select(position => position.Board);

    private static IRule Rule(string name) => Ladder.Standard[new(name)].Rule;
}
