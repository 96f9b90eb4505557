using Companion.Engine.Planning;
using Companion.Engine.Proofs;
using Companion.Engine.Rules;
using Companion.Engine.Search;
using Companion.Engine.Tests.Rules;

namespace Companion.Engine.Tests.Planning;

public sealed class RunPlanTests
{
    private static readonly Ladder Ladder = ShippedLadder.Ladder.WithoutLastResorts();
    private static readonly RuleId[] Featured = [new("x-wing"), new("xy-wing"), new("naked-pair")];

    public static TheoryData<string> Puzzles => [.. OwnPuzzles.All];

    [Theory]
    [MemberData(nameof(Puzzles))]
    public void Every_step_is_proved_where_it_stands_and_all_together_lead_to_the_solution(string puzzle)
    {
        var plan = PlanFor(puzzle, Timing.Late);
        var solution = SolutionCounter.Find(plan.Start)[0];
        var board = plan.Start;
        foreach (var step in plan.Steps)
        {
            Assert.Equal(board.Candidates, step.Board.Candidates);
            Assert.True(Proves(board, step.Deduction), $"{step.Deduction}");
            Assert.All(step.Deduction.Places, placed => Assert.True(solution.Holds(placed)));
            Assert.All(step.Deduction.Removes, removed => Assert.False(solution.Holds(removed)));
            board = board.Apply(step.Deduction);
        }

        Assert.Equal(board.ToString(), plan.End.ToString());
        Assert.Equal(Route.From(plan.Start, Ladder, Stop).IsComplete, plan.IsComplete);
    }

    [Theory]
    [MemberData(nameof(Puzzles))]
    public void No_step_that_takes_candidates_away_can_be_left_out_but_for_the_turns_of_featured_rules(string puzzle)
    {
        var plan = PlanFor(puzzle, Timing.Late);
        Assert.SkipUnless(plan.IsComplete, "The ladder does not solve it: every step may matter to whoever goes on.");
        for (var place = 0; place < plan.Steps.Length; place++)
        {
            if (plan.Steps[place] is { IsFeatured: false, Deduction.Places.IsEmpty: true })
                Assert.False(Holds(plan, without: place), $"{plan.Steps[place].Deduction}");
        }
    }

    [Theory]
    [MemberData(nameof(Puzzles))]
    public void A_featured_rule_has_its_turn_where_it_is_open(string puzzle)
    {
        foreach (var rule in Featured)
        {
            var plan = RunPlan.From(Board.Parse(puzzle), Ladder, [new(rule)], cancel: Stop);
            var turn = plan.Turns[0];

            Assert.Equal(plan.Steps.Any(step => Ladder[rule].IsOpenOn(step.Board, Stop)), turn.Step is not null);
            Assert.All(turn.Others, other => Assert.True(Proves(plan.Steps[other.First].Board, other.Deduction)));
            if (turn.Step is not { } at)
                continue;
            Assert.Equal((rule, true), (plan.Steps[at].Deduction.Rule, plan.Steps[at].IsFeatured));
            Assert.Equal(turn.Deduction, plan.Steps[at].Deduction);
        }
    }

    [Fact]
    public void Several_featured_rules_have_their_turns_on_one_route()
    {
        Assert.True(OwnPuzzles.All.Count(puzzle => PlanFor(puzzle, Timing.Late).Turns.All(turn => turn.Step is not null)) >= 12);
    }

    [Theory]
    [MemberData(nameof(Puzzles))]
    public void Early_it_comes_no_later_than_late(string puzzle)
    {
        foreach (var rule in Featured)
        {
            var early = RunPlan.From(Board.Parse(puzzle), Ladder, [new(rule, Timing.Early)], cancel: Stop).Turns[0].Step;
            var late = RunPlan.From(Board.Parse(puzzle), Ladder, [new(rule)], cancel: Stop).Turns[0].Step;

            Assert.Equal(early is null, late is null);
            Assert.True(early is null || early <= late, $"{rule}: early {early}, late {late}");
        }
    }

    [Theory]
    [MemberData(nameof(Puzzles))]
    public void A_gate_is_a_step_beside_which_nothing_as_easy_is_open_and_not_one_of_the_last_full_houses(string puzzle)
    {
        string[] singles = ["full-house", "hidden-single", "naked-single"];
        var plan = PlanFor(puzzle, Timing.Late);
        foreach (var step in plan.Steps)
        {
            var isSingle = singles.Contains(step.Deduction.Rule.Value);
            var open = Ladder.Rungs.Where(rung => rung.Place <= step.Rung.Place || (isSingle && singles.Contains(rung.Rule.Id.Value)))
                .SelectMany(rung => RuleCheck.Find(rung.Rule, step.Board))
                .Append(step.Deduction).Select(deduction => (deduction.Places, deduction.Removes)).Distinct();

            Assert.Equal(open.Count() == 1 && !FullHousesFill(step.Board), step.IsGate);
        }

        Assert.False(plan.Steps[^1].IsGate);
    }

    [Theory]
    [MemberData(nameof(Puzzles))]
    public void Passages_hold_each_step_once_in_order(string puzzle)
    {
        var plan = PlanFor(puzzle, Timing.Early);
        var next = 0;
        foreach (var passage in Passage.Of(plan.Steps))
        {
            Assert.Equal(next, passage.First);
            Assert.InRange(passage.Count, 1, plan.Steps.Length - next);
            Assert.All(plan.Steps[next..(next + passage.Count)], step => Assert.True(Fits(passage.Theme, step)));
            next += passage.Count;
        }

        Assert.Equal(plan.Steps.Length, next);
    }

    [Fact]
    public void It_goes_on_near_the_last_entry()
    {
        // Full houses in opposite corners; the one in the house of the last entry comes first, whichever that is.
        var board = Board.Parse(".2345678.456789123789123456214365897365897214897214365531642978642978531.78531642");
        var corners = board.Open.ToList();
        foreach (var corner in corners)
        {
            var last = new Deduction
            {
                Rule = new("full-house"),
                Cells = [],
                Digits = DigitSet.All,
                Places = CandidateSet.Of(new Candidate(corner, Digit.Of(9))),
            };

            var plan = RunPlan.From(board, Ladder, [], last, Stop);
            Assert.Contains(plan.Steps[0].Deduction.Places.First().Cell.Houses, house => house.Cells.Contains(corner));
        }
    }

    [Fact]
    public void The_demo_is_told_in_passages()
    {
        var plan = RunPlan.From(
            Board.Parse("45...9....8..5.4.31....48..6..9......7..1..9......2..8..61....25.2.9..4....4...35"),
            Ladder, [new(new("xy-wing"))], cancel: Stop);

        Assert.Equal(
            "InChute 3, Everywhere 4, OfDigit 5, InHouse 2, OfRule naked-pair 1, OfRule hidden-pair 1, OfRule x-wing 1, InHouse 1, Turn 1",
            string.Join(", ", Passage.Of(plan.Steps).Take(9).Select(passage => passage.Theme is Theme.OfRule same
                ? $"OfRule {same.Rule} {passage.Count}"
                : $"{passage.Theme.GetType().Name} {passage.Count}")));
    }

    [Fact]
    public void A_featured_rule_that_is_not_on_the_ladder_is_refused()
    {
        Assert.Throws<ArgumentException>(() =>
            RunPlan.From(Board.Parse(OwnPuzzles.All[0]), Ladder.UpTo(new("x-wing")), [new(new("xy-wing"))], cancel: Stop));
    }

    private static CancellationToken Stop => TestContext.Current.CancellationToken;

    private static RunPlan PlanFor(string puzzle, Timing timing) =>
        RunPlan.From(Board.Parse(puzzle), Ladder, Featured.Select(rule => new Feature(rule, timing)), cancel: Stop);

    private static bool Proves(Board board, Deduction deduction) =>
        (deduction.AssumesOneSolution ? UniquenessChecker.Check(board, deduction) : ProofChecker.Check(board, deduction)).Holds;

    private static bool Holds(RunPlan plan, int without)
    {
        var board = plan.Start;
        for (var place = 0; place < plan.Steps.Length; place++)
        {
            if (place == without)
                continue;
            if (!board.Candidates.ContainsAll(plan.Steps[place].Deduction.Places) || !Proves(board, plan.Steps[place].Deduction))
                return false;
            board = board.Apply(plan.Steps[place].Deduction);
        }

        return board.IsFull;
    }

    // House by house: where one cell is open, it gets what is missing.
    private static bool FullHousesFill(Board board)
    {
        var open = board.Open;
        while (HouseSet.All.Select(house => open & house.Cells).FirstOrDefault(cells => cells.Count == 1) is { IsEmpty: false } last)
            open -= last;
        return open.IsEmpty;
    }

    private static bool Fits(Theme theme, PlannedStep step) => theme switch
    {
        Theme.Turn turn => step.IsFeatured && step.Deduction.Rule == turn.Rule,
        Theme.OfRule same => !step.IsFeatured && step.Deduction.Rule == same.Rule,
        Theme.InHouse inHouse => inHouse.House.Cells.ContainsAll(step.Deduction.Places.Cells),
        Theme.OfDigit ofDigit => step.Deduction.Places.Digits == DigitSet.Of(ofDigit.Digit),
        Theme.InChute inChute => inChute.Chute.Cells.ContainsAll(step.Deduction.Places.Cells),
        _ => step.Deduction.Places.Count == 1,
    };
}
