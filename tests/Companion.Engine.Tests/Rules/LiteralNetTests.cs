using Companion.Engine.Proofs;
using Companion.Engine.Rules;
using Companion.Engine.Search;
using Companion.Engine.Tests.Corpus;

namespace Companion.Engine.Tests.Rules;

/// <summary>
/// A net is found wherever there is one, and there is none with fewer steps: all sets of singles are gone through to make sure.
/// </summary>
public sealed class LiteralNetTests(ITestOutputHelper output)
{
    // To go through all sets of more singles takes long; it was done once, up to 14.
    private const int MostSteps = 6;

    [Fact]
    public void A_forcing_net_is_there_just_where_singles_refute_a_candidate_and_has_as_few_steps_as_any() =>
        Compare(NetPositions.All.Where((_, place) => place % 2 == 0), atLeast: 20);

    [Fact]
    public void The_same_on_hard_puzzles() =>
        // A community list, no source.
        Compare(
            OpenData.Puzzles("hard-1465-part.txt", oneOf: 60).Select(puzzle => Fixpoint.Of(Board.Parse(puzzle), RuleSets.Subsets)),
            atLeast: 10);

    [Fact]
    public void A_nested_net_is_there_just_where_easy_rules_in_any_order_refute_a_candidate()
    {
        IRule[] rules =
        [
            new XWing(), new HiddenTriple(), new NakedTriple(), new HiddenPair(), new NakedPair(), new Claiming(), new Pointing(),
            new NakedSingle(), new HiddenSingle(),
        ];
        var compared = 0;
        foreach (var board in NetPositions.All.Where((_, place) => place % 3 == 0))
        {
            var refuted = board.Candidates.Where(candidate => Leads(board.Place(candidate), rules)).ToList();
            if (refuted.Count == 0)
                continue;
            var nets = RuleCheck.Find(new NestedForcingNet(), board);
            Assert.Equal(Math.Min(refuted.Count, 12), nets.Count);
            Assert.All(nets, net => Assert.Contains(net.Removes.Single(), refuted));
            Assert.All(nets.SelectMany(net => net.Branches).SelectMany(branch => branch.Steps), step => Assert.Empty(step.Branches));
            compared++;
        }

        Assert.True(compared > 10);
    }

    [Fact]
    public void Where_easy_rules_refute_none_a_nested_net_is_there_just_where_suppositions_within_do()
    {
        foreach (var board in new[] { NetPositions.All[1], NetPositions.All[18] })
        {
            var grid = new LiteralGrid(board);
            var nets = RuleCheck.Find(new NestedForcingNet(), board).SelectMany(net => LiteralChain.Plain(net.Removes)).ToList();
            Assert.True(nets.Count < 12, "More may be refuted than are given.");
            var sample = LiteralChain.Plain(board.Candidates).Where((_, place) => place % 30 == 0).Union(nets).Order().ToList();
            int[] depths = [0, 1, 2, 4, int.MaxValue];
            var refuted = depths
                .Select(rounds => sample.FindAll(candidate => LiteralNets.IsRefutedInTurn(grid, candidate, rounds)))
                .First(found => found.Count > 0);
            Assert.Equal(nets, refuted);
        }
    }

    private static bool Leads(Board board, IRule[] rules)
    {
        while (!DeadEnd.FindAll(board, board).Any())
        {
            var found = rules.SelectMany(rule => RuleCheck.Find(rule, board)).ToList();
            if (found.Count == 0)
                return false;
            foreach (var deduction in found)
            {
                board = board.Remove(deduction.Removes);
                foreach (var placed in deduction.Places & board.Candidates)
                    board = board.Candidates.Contains(placed) ? board.Place(placed) : board;
            }
        }

        return true;
    }

    private void Compare(IEnumerable<Board> boards, int atLeast)
    {
        var lengths = new SortedDictionary<int, int>();
        var none = 0;
        foreach (var board in boards.Where(board => !board.IsFull))
        {
            var grid = new LiteralGrid(board);
            var refuted = LiteralNets.Refuted(grid);
            var nets = RuleCheck.Find(new ForcingNet(), board);
            if (refuted.Count == 0)
            {
                Assert.Empty(nets);
                none++;
                continue;
            }

            Assert.NotEmpty(nets);
            if (nets[0].Branches[0].Steps.Length > MostSteps)
                continue;
            var (steps, candidates) = LiteralNets.Fewest(grid, refuted);
            Assert.Equal(candidates.Order(), nets.SelectMany(net => LiteralChain.Plain(net.Removes)));
            Assert.All(nets, net => Assert.Equal(steps, Assert.Single(net.Branches).Steps.Length));
            lengths[steps] = lengths.GetValueOrDefault(steps) + 1;
        }

        output.WriteLine($"The fewest steps, and on how many positions: {string.Join(", ", lengths)}; no net on {none}.");
        Assert.True(lengths.Values.Sum() >= atLeast);
    }
}
