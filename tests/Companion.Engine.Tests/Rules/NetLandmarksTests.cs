using Companion.Engine.Rules.Nets;

namespace Companion.Engine.Tests.Rules;

/// <summary>Landmarks never ask for more steps than the shortest net has, which is found by going through all sets of singles.</summary>
public sealed class NetLandmarksTests
{
    // To go through all sets of more singles takes long.
    private const int MostSteps = 6;

    [Fact]
    public void No_net_has_fewer_steps_than_there_are_landmarks_of_which_there_are_often_more_than_rounds()
    {
        var (compared, more) = (0, 0);
        foreach (var board in NetPositions.All.Where((board, place) => place % 4 == 1 && !board.IsFull))
        {
            var grid = new LiteralGrid(board);
            var graph = new NetGraph();
            graph.Read(board);
            var trial = new NetTrial();
            Assert.True(trial.Begin(graph));
            for (var candidate = 0; candidate < graph.Count; candidate++)
            {
                if (trial.RoundsFrom(candidate) is not { } rounds)
                    continue;
                var least = trial.LeastSteps(candidate);
                if (Math.Max(rounds, least) > MostSteps)
                    continue;
                var (steps, _) = LiteralNets.Fewest(grid, [.. LiteralChain.Plain(CandidateSet.Of(graph[candidate]))]);
                Assert.InRange(least, 0, steps);
                Assert.InRange(rounds, 0, steps);
                compared++;
                more += least > rounds ? 1 : 0;
            }
        }

        Assert.True(compared > 20 && more > compared / 4, $"{more} of {compared}");
    }
}
