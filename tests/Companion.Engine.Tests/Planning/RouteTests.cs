using Companion.Engine.Planning;
using Companion.Engine.Rules;
using Companion.Engine.Search;
using Companion.Engine.Tests.Rules;

namespace Companion.Engine.Tests.Planning;

public sealed class RouteTests
{
    // Source: the easy example of the code that goes with Russell & Norvig, "Artificial Intelligence: A Modern Approach".
    private const string Textbook = "003020600900305001001806400008102900700000008006708200002609500800203009005010300";

    [Fact]
    public void A_round_is_all_that_the_easiest_rule_which_finds_anything_finds()
    {
        foreach (var puzzle in OwnPuzzles.All)
        {
            var route = Route.From(Board.Parse(puzzle), Ladder.Standard, Stop);
            foreach (var round in route.Rounds)
            {
                Assert.Equal(RuleCheck.Find(round.Rung.Rule, round.Board), round.Open);
                Assert.All(
                    Ladder.Standard.Rungs.Where(easier => easier.Place < round.Rung.Place),
                    easier => RuleCheck.FindsNothing(easier.Rule, round.Board));
            }
        }
    }

    [Fact]
    public void The_rounds_lead_from_one_board_to_the_next_and_end_where_nothing_is_open()
    {
        foreach (var puzzle in OwnPuzzles.All)
        {
            var route = Route.From(Board.Parse(puzzle), Ladder.Standard, Stop);
            var after = route.Rounds.Select(round => round.Board.Apply(round.Open).ToString());

            Assert.Equal([.. route.Rounds.Skip(1).Select(round => round.Board.ToString()), route.End.ToString()], after);
            Assert.Empty(Ladder.Standard.Scan(route.End, TestContext.Current.CancellationToken));
        }
    }

    // A list of hard puzzles of the open data, some of which nothing but last resorts opens.
    [Fact]
    public void Two_cores_find_what_one_finds()
    {
        foreach (var board in OpenData.Puzzles("hard-1465-part.txt", oneOf: 61).Select(Board.Parse))
        {
            var (one, two) = (Route.From(board, ShippedLadder.Ladder, Stop), Route.From(board, ShippedLadder.Ladder, cores: 2, Stop));

            Assert.Equal(one.Rounds.Select(round => round.Rung), two.Rounds.Select(round => round.Rung));
            Assert.Equal(one.Rounds.SelectMany(round => round.Open), two.Rounds.SelectMany(round => round.Open));
        }
    }

    [Fact]
    public void A_round_of_a_last_resort_is_all_that_it_finds_too()
    {
        var rounds = OpenData.Puzzles("hard-1465-part.txt", oneOf: 30)
            .SelectMany(puzzle => Route.From(Board.Parse(puzzle), ShippedLadder.Ladder, Stop).Rounds)
            .Where(round => round.Rung.Rule.Effort == Effort.LastResort).ToList();

        Assert.Contains(rounds, round => round.Ways > 1);
        Assert.All(rounds, round => Assert.Equal(RuleCheck.Find(round.Rung.Rule, round.Board), round.Open));
    }

    [Fact]
    public void The_steps_of_a_round_leave_out_only_what_was_said_before()
    {
        foreach (var round in OwnPuzzles.All.SelectMany(puzzle => Route.From(Board.Parse(puzzle), Ladder.Standard, Stop).Rounds))
        {
            Assert.Subset(round.Open.ToHashSet(), round.Steps.ToHashSet());
            Assert.Equal(round.Board.Apply(round.Open).ToString(), round.Board.Apply(round.Steps).ToString());
            Assert.True(round.Steps.Count() <= round.Ways);
        }
    }

    [Fact]
    public void A_puzzle_for_singles_is_climbed_by_singles_to_its_solution()
    {
        var route = Route.From(Board.Parse(Textbook), Ladder.Standard, Stop);

        Assert.True(route.IsComplete);
        Assert.Equal(SolutionCounter.Find(Board.Parse(Textbook)).Single().ToString(), route.End.ToString());
        Assert.Equal("hidden-single", route.Hardest?.Rule.Id.Value);
    }

    [Fact]
    public void The_hardest_rung_is_the_one_without_which_the_route_ends_too_soon()
    {
        var hard = OwnPuzzles.All.Select(puzzle => Route.From(Board.Parse(puzzle), Ladder.Standard, Stop))
            .Where(route => route.IsComplete && route.Hardest!.Place > 2).ToList();

        Assert.NotEmpty(hard);
        Assert.All(hard, route =>
        {
            var needed = route.Hardest!.Rule.Id;
            var easier = Ladder.Standard.Rungs.Last(rung => rung.Place < route.Hardest.Place).Rule.Id;
            Assert.True(Route.From(route.Rounds[0].Board, Ladder.Standard.UpTo(needed), Stop).IsComplete);
            Assert.False(Route.From(route.Rounds[0].Board, Ladder.Standard.UpTo(easier), Stop).IsComplete);
        });
    }

    [Fact]
    public void A_full_board_needs_no_round()
    {
        var route = Route.From(SolutionCounter.Find(Board.Parse(Textbook)).Select(grid => Board.Parse(grid.ToString())).Single(), Ladder.Standard, Stop);

        Assert.Empty(route.Rounds);
        Assert.True(route.IsComplete);
        Assert.Null(route.Hardest);
    }

    private static CancellationToken Stop => TestContext.Current.CancellationToken;
}
