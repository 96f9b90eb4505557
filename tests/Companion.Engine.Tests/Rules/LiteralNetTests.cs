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
