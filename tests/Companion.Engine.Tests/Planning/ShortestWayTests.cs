using Companion.Engine.Planning;
using Companion.Engine.Proofs;
using Companion.Engine.Rules;
using Companion.Engine.Tests.Rules;

namespace Companion.Engine.Tests.Planning;

public sealed class ShortestWayTests
{
    private const int Far = 20;

    private static readonly (int Boards, int Scans)[] Allowances = [(1, 1), (9, 0), (9, 1), (9, 9), (99, 1), (99, 9), (999, 99)];

    private static readonly Ladder Ladder = ShippedLadder.Ladder.WithoutLastResorts();

    [Theory]
    [InlineData("naked-pair")]
    [InlineData("x-wing")]
    [InlineData("xy-wing")]
    public void However_early_it_gives_up_it_says_no_more_than_all_orders_of_all_steps_bear_out(string name)
    {
        var (its, easier) = (Ladder[new(name)], Ladder.Below(new(name)));
        var told = new HashSet<(bool IsFound, int Steps)>();
        foreach (var board in Boards(its, easier).Take(40))
        {
            var (fewest, _) = AllOrders.Fewest(board, its, easier, Stop);
            foreach (var (boards, scans) in Allowances)
            {
                var (way, atLeast) = new ShortestWay(its, easier, Stop) { MostBoards = boards, MostScans = scans }.Below(board, Far);
                told.Add((way is not null, atLeast));
                Assert.InRange(atLeast, 1, fewest ?? Far);
                if (way is null)
                    continue;
                Assert.Equal((atLeast, atLeast), (way.Steps.Length, fewest ?? atLeast));
                Assert.True(its.IsOpenOn(way.Steps.Aggregate(board, (before, step) => Made(before, step, easier)), Stop));
            }
        }

        Assert.Superset(new HashSet<(bool, int)> { (true, 1), (true, 2), (false, 1), (false, 2) }, told);
    }

    [Fact]
    public void Where_a_rule_may_find_less_than_all_nothing_is_proved()
    {
        var last = ShippedLadder.Ladder.Rungs.First(rung => rung.Rule.Effort == Effort.LastResort);
        var board = Puzzle.Parse(OwnPuzzles.All[0]).Board;

        Assert.Equal((null, 1), new ShortestWay(last, ShippedLadder.Ladder.Below(last.Rule.Id), Stop).Below(board, Far));
    }

    private static CancellationToken Stop => TestContext.Current.CancellationToken;

    private static Board Made(Board before, Deduction step, Ladder easier)
    {
        Assert.Contains(step, easier.Scan(before, Stop));
        return before.Apply(step);
    }

    // On these the rule is not open.
    private static IEnumerable<Board> Boards(Rung its, Ladder easier) =>
        from text in OwnPuzzles.All
        from round in Route.From(Puzzle.Parse(text).Board, easier, Stop).Rounds
        where !its.IsOpenOn(round.Board, Stop)
        select round.Board;
}
