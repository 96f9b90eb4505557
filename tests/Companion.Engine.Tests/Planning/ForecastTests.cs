using Companion.Engine.Planning;
using Companion.Engine.Proofs;
using Companion.Engine.Rules;
using Companion.Engine.Tests.Rules;

namespace Companion.Engine.Tests.Planning;

public sealed class ForecastTests
{
    private static readonly Ladder Ladder = ShippedLadder.Ladder.WithoutLastResorts();
    private static readonly RuleId[] Featured = [new("naked-pair"), new("x-wing"), new("xy-wing")];

    public static TheoryData<string> Puzzles => [.. OwnPuzzles.All];

    [Theory]
    [MemberData(nameof(Puzzles))]
    public void The_steps_before_lead_to_the_pattern_and_none_of_them_can_be_left_out(string text)
    {
        var puzzle = Puzzle.Parse(text);
        foreach (var rule in Featured)
        {
            var forecast = Forecast.Of(puzzle.Board, puzzle.Solution, Ladder, rule, Stop);
            if (forecast.First is not { } first)
                continue;
            Assert.True(LeadsTo(puzzle.Board, forecast.Before, first));
            Assert.All(forecast.Before, step => Assert.True(Ladder.RungOf(step.Rule) < Ladder.RungOf(rule)));
            for (var place = 0; place < forecast.Before.Length; place++)
                Assert.False(LeadsTo(puzzle.Board, forecast.Before.RemoveAt(place), first));
        }
    }

    [Theory]
    [MemberData(nameof(Puzzles))]
    public void No_order_of_easier_steps_is_shorter_than_is_told(string text)
    {
        var puzzle = Puzzle.Parse(text);
        foreach (var (rule, round) in from rule in Featured from round in Route.From(puzzle.Board, Ladder, Stop).Rounds select (rule, round))
        {
            var forecast = Forecast.Of(round.Board, puzzle.Solution, Ladder, rule, Stop);
            if (forecast.First is null)
                continue;
            var (fewest, tried) = AllOrders.Fewest(round.Board, Ladder[rule], Ladder.Below(rule), Stop);
            Assert.InRange(forecast.AtLeast, 0, Math.Min(fewest ?? int.MaxValue, forecast.Before.Length));
            if (forecast.IsExact && forecast.Before.Length <= tried)
                Assert.Equal(forecast.Before.Length, fewest);
        }
    }

    [Fact]
    public void Few_steps_are_proved_to_be_the_fewest_and_of_many_it_is_told_how_many_there_are_at_least()
    {
        var forecasts =
            (from text in OwnPuzzles.All
             let puzzle = Puzzle.Parse(text)
             from round in Route.From(puzzle.Board, Ladder, Stop).Rounds
             from rule in Featured
             let forecast = Forecast.Of(round.Board, puzzle.Solution, Ladder, rule, Stop)
             where forecast.First is not null
             select forecast).ToList();

        Assert.All(forecasts.Where(forecast => forecast.Before.Length <= 3), forecast => Assert.True(forecast.IsExact));
        Assert.Contains(forecasts, forecast => forecast.AtLeast > 3 && !forecast.IsExact);
    }

    [Theory]
    [MemberData(nameof(Puzzles))]
    public void It_is_open_now_just_where_the_rule_finds_something_and_comes_where_easier_rules_stop_and_it_finds_something(string text)
    {
        var puzzle = Puzzle.Parse(text);
        foreach (var (rule, round) in from rule in Featured from round in Route.From(puzzle.Board, Ladder, Stop).Rounds select (rule, round))
        {
            var forecast = Forecast.Of(round.Board, puzzle.Solution, Ladder, rule, Stop);
            var easier = Route.From(round.Board, Ladder.Below(rule), Stop);

            Assert.Equal(Ladder[rule].IsOpenOn(round.Board, Stop), forecast.IsOpen);
            if (Ladder[rule].IsOpenOn(easier.End, Stop))
                Assert.NotNull(forecast.First);
        }
    }

    [Theory]
    [MemberData(nameof(Puzzles))]
    public void A_near_miss_is_open_when_its_one_false_candidate_goes_and_not_before(string text)
    {
        var puzzle = Puzzle.Parse(text);
        foreach (var (rule, round) in from rule in Featured from round in Route.From(puzzle.Board, Ladder, Stop).Rounds select (rule, round))
        {
            foreach (var miss in Forecast.Of(round.Board, puzzle.Solution, Ladder, rule, Stop).NearMisses)
            {
                Assert.False(puzzle.Solution.Holds(miss.InTheWay));
                Assert.False(Proves(round.Board, miss.Deduction));
                Assert.True(Proves(round.Board.Remove(CandidateSet.Of(miss.InTheWay)), miss.Deduction));
            }
        }
    }

    [Fact]
    public void Near_misses_turn_up()
    {
        var puzzle = Puzzle.Parse(OwnPuzzles.All[5]);

        Assert.Contains(
            Route.From(puzzle.Board, Ladder, Stop).Rounds,
            round => Forecast.Of(round.Board, puzzle.Solution, Ladder, new("xy-wing"), Stop).NearMisses.Length > 0);
    }

    private static CancellationToken Stop => TestContext.Current.CancellationToken;

    private static bool LeadsTo(Board board, IEnumerable<Deduction> steps, Deduction first)
    {
        foreach (var step in steps)
        {
            if (!board.Candidates.ContainsAll(step.Places) || !Proves(board, step))
                return false;
            board = board.Apply(step);
        }

        return Proves(board, first);
    }

    private static bool Proves(Board board, Deduction deduction) =>
        (deduction.AssumesOneSolution ? UniquenessChecker.Check(board, deduction) : ProofChecker.Check(board, deduction)).Holds;
}
