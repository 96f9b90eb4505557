using Companion.Engine.Planning;
using Companion.Engine.Proofs;
using Companion.Engine.Rules;
using Companion.Engine.Tests.Rules;

namespace Companion.Engine.Tests.Planning;

public sealed class RuleNeedTests
{
    private static readonly Ladder Ladder = ShippedLadder.Ladder.WithoutLastResorts();
    private static readonly string[] Featured = ["hidden-single", "naked-pair", "x-wing", "xy-wing", "swordfish", "xy-chain"];

    [Fact]
    public void A_rule_is_needed_just_where_the_ladder_without_it_and_anything_harder_stops_and_it_goes_on()
    {
        var seen = new Dictionary<Need, int>();
        foreach (var (start, rule) in from puzzle in OwnPuzzles.All from name in Featured select (Board.Parse(puzzle), new RuleId(name)))
        {
            var need = RuleNeed.Of(start, Ladder, rule, TestContext.Current.CancellationToken);
            seen[need.Need] = seen.GetValueOrDefault(need.Need) + 1;
            var stop = OneByOne(start, Ladder.UpTo(rule).Rungs.Where(rung => rung.Rule.Id != rule));

            Assert.Equal(need.Need == Need.Spare, stop.IsFull);
            Assert.Equal(need.Need == Need.Needed, !stop.IsFull && Finds(rule, stop));
            if (need.Need == Need.Needed)
                Assert.Equal(stop.Candidates, need.Board!.Candidates);
            else if (need.Need == Need.Late)
                Assert.True(Finds(rule, need.Board!));
        }

        Assert.Equal([Need.Spare, Need.Needed, Need.Late, Need.Never], seen.Keys.Order());
    }

    [Fact]
    public void A_rule_that_never_has_its_turn_may_be_open_beside_easier_ones_and_the_first_board_is_told()
    {
        var told = 0;
        foreach (var (start, rule) in from puzzle in OwnPuzzles.All from name in Featured select (Board.Parse(puzzle), new RuleId(name)))
        {
            var need = RuleNeed.Of(start, Ladder, rule, TestContext.Current.CancellationToken);
            var boards = Route.From(start, Ladder, TestContext.Current.CancellationToken).Rounds.Select(round => round.Board);
            var first = need.Need == Need.Never ? boards.FirstOrDefault(board => Finds(rule, board)) : null;
            told += first is null ? 0 : 1;

            Assert.Equal(first?.Candidates, need.Beside?.Candidates);
        }

        Assert.True(told > 0);
    }

    [Fact]
    public void What_leads_round_a_rule_leads_to_the_solution_without_it()
    {
        foreach (var (start, rule) in from puzzle in OwnPuzzles.All from name in Featured select (Board.Parse(puzzle), new RuleId(name)))
        {
            var need = RuleNeed.Of(start, Ladder, rule, TestContext.Current.CancellationToken);
            var from = need.Board ?? start;
            var without = OneByOne(from, Ladder.Rungs.Where(rung => rung.Rule.Id != rule));

            Assert.DoesNotContain(need.Instead, rung => rung.Rule.Id == rule);
            Assert.Equal(without.IsFull, !need.Instead.IsEmpty);
            if (!need.Instead.IsEmpty)
                Assert.True(Route.From(from, Only(need.Instead), TestContext.Current.CancellationToken).IsComplete);
            if (need.Need == Need.Needed && !need.Instead.IsEmpty)
                Assert.True(need.Instead[0].Place > Ladder.RungOf(rule));
        }
    }

    [Fact]
    public void What_leads_round_a_rule_is_the_same_whether_it_is_looked_for_anew_or_shares_rounds_with_the_route()
    {
        var wing = new RuleId("xy-wing");
        var cases = (from puzzle in OwnPuzzles.All from name in Featured select (puzzle, rule: new RuleId(name), ladder: Ladder))
            .Concat(from puzzle in OwnPuzzles.All.Take(4) select (puzzle, rule: wing, ladder: ShippedLadder.Ladder));
        foreach (var (puzzle, rule, ladder) in cases)
        {
            var need = RuleNeed.Of(Board.Parse(puzzle), ladder, rule, TestContext.Current.CancellationToken);
            if (need.Board is not { } from)
                continue;
            var anew = Route.From(from, ladder.Without(rule), TestContext.Current.CancellationToken);
            Assert.Equal(anew.IsComplete ? anew.Rungs : [], need.Instead);
        }
    }

    [Fact]
    public void The_demo_needs_the_rule_that_it_features()
    {
        var demo = Board.Parse("45...9....8..5.4.31....48..6..9......7..1..9......2..8..61....25.2.9..4....4...35");

        Assert.Equal(Need.Needed, RuleNeed.Of(demo, Ladder, new("xy-wing"), TestContext.Current.CancellationToken).Need);
    }

    [Fact]
    public void A_rule_that_is_not_on_the_ladder_is_refused()
    {
        Assert.Throws<ArgumentException>(() =>
            RuleNeed.Of(Board.Blank, Ladder.UpTo(new("x-wing")), new("xy-wing"), TestContext.Current.CancellationToken));
    }

    // Step by step with the first rule that finds anything, and only its first deduction: not by rounds as the route goes.
    private static Board OneByOne(Board board, IEnumerable<Rung> rungs)
    {
        var rules = rungs.Select(rung => rung.Rule).ToList();
        while (Step(board, rules) is { } next)
            board = next;
        return board;
    }

    private static Board? Step(Board board, List<IRule> rules)
    {
        foreach (var rule in rules)
        {
            var found = new Findings(limit: 1);
            rule.Find(board, found);
            if (found.Count > 0)
                return board.Apply(found[0]);
        }

        return null;
    }

    private static Ladder Only(IEnumerable<Rung> rungs) =>
        Ladder.Rungs.Except(rungs).Aggregate(Ladder, (left, other) => left.Without(other.Rule.Id));

    private static bool Finds(RuleId rule, Board board) => Ladder[rule].IsOpenOn(board);
}
