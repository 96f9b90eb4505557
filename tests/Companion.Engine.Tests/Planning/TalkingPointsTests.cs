using System.Collections.Immutable;
using Companion.Engine.Planning;
using Companion.Engine.Planning.Talking;
using Companion.Engine.Proofs;
using Companion.Engine.Rules;
using Companion.Engine.Search;
using Companion.Engine.Tests.Rules;

namespace Companion.Engine.Tests.Planning;

public sealed class TalkingPointsTests
{
    private static readonly Ladder Ladder = ShippedLadder.Ladder.WithoutLastResorts();
    private static readonly Rarity Rarity = Rarity.Parse(File.ReadAllText(Path.Combine(Repository.Root, "configs", "rarity.json")));

    private static readonly Lazy<List<(RunPlan Plan, TalkingPoint Point)>> Said = new(() =>
    [
        .. OwnPuzzles.All.Select(puzzle => RunPlan.From(Board.Parse(puzzle), Ladder, [new(new("xy-wing"))]))
            .SelectMany(plan => TalkingPoints.Of(plan), (plan, point) => (plan, point)),
    ]);

    [Fact]
    public void Every_kind_of_remark_turns_up()
    {
        Assert.Equal(
            typeof(TalkingPoint).GetNestedTypes().Where(type => type.IsSubclassOf(typeof(TalkingPoint))).Select(type => type.Name).Order(),
            Said.Value.Select(said => said.Point.GetType().Name).Distinct().Order());
    }

    [Fact]
    public void What_is_said_of_a_wing_is_true_of_its_cells()
    {
        foreach (var (plan, point) in Said.Value)
        {
            switch (point)
            {
                case TalkingPoint.PincerInBlock its:
                    Assert.Equal(new("xy-wing"), plan.Steps[its.At].Deduction.Rule);
                    Assert.True(its.Block.Cells.Contains(its.Pivot) && its.Block.Cells.Contains(its.Pincer));
                    Assert.Equal((Role.Pivot, Role.Pincer), (RoleOf(plan, its.At, its.Pivot), RoleOf(plan, its.At, its.Pincer)));
                    break;
                case TalkingPoint.WingOverThreeBlocks its:
                    Assert.Equal(3, its.Pincers.With(its.Pivot).Select(cell => cell.Block).Distinct().Count());
                    break;
                case TalkingPoint.PivotOfTwoWings its:
                    Assert.Contains(RuleCheck.Find(Ladder[plan.Steps[its.At].Deduction.Rule].Rule, plan.Steps[its.At].Board), other =>
                        other.PatternCells == its.Other.With(its.Pivot) && other.PatternCells != plan.Steps[its.At].Deduction.PatternCells);
                    break;
                case TalkingPoint.BivalueCells its:
                    Assert.Equal(CellSet.All.Count(cell => plan.Steps[its.At].Board[cell].Count == 2), its.Count);
                    break;
            }
        }
    }

    [Fact]
    public void What_a_step_is_said_to_bring_about_comes_about()
    {
        IRule[] singles = [new FullHouse(), new HiddenSingle(), new NakedSingle()];
        foreach (var (plan, point) in Said.Value)
        {
            switch (point)
            {
                case TalkingPoint.BlockDecided its:
                    Assert.Equal(2, its.Block.Cells.Count(cell => plan.Steps[its.At].Board[cell].Contains(its.Digit)));
                    Assert.Equal([its.Cell], its.Block.Cells.Where(cell => After(plan, its.At)[cell].Contains(its.Digit)));
                    break;
                case TalkingPoint.Fills its:
                    var step = plan.Steps[its.At];
                    Assert.Equal((OneByOne(After(plan, its.At), singles) - OneByOne(step.Board, singles) - step.Deduction.Places.Cells).Count, its.Cells);
                    break;
                case TalkingPoint.FirstDigit its:
                    Assert.Equal(9, CountOf(After(plan, its.At), its.Digit));
                    Assert.All(Digit.All, digit => Assert.True(CountOf(plan.Steps[its.At].Board, digit) < 9));
                    break;
            }
        }
    }

    [Fact]
    public void What_a_step_places_itself_is_not_said_to_be_filled_by_singles()
    {
        IRule[] singles = [new FullHouse(), new HiddenSingle(), new NakedSingle()];
        var puzzle = Puzzle.Parse(OwnPuzzles.All[0]);
        var stuck = Fixpoint.Of(puzzle.Board, singles);
        foreach (var cell in stuck.Open)
        {
            var placed = new Candidate(cell, puzzle.Solution[cell]);
            var deduction = new Deduction
            {
                Rule = new("house-forcing-chain"),
                Cells = [new(cell, Role.Start)],
                Digits = DigitSet.Of(placed.Digit),
                Places = CandidateSet.Of(placed),
            };
            var end = stuck.Apply(deduction);
            var plan = new RunPlan(Ladder, stuck, [new(stuck, Ladder[deduction.Rule], deduction, IsFeatured: false) { Ways = 1 }], end, []);
            var said = TalkingPoints.Of(plan).OfType<TalkingPoint.Fills>().SingleOrDefault()?.Cells ?? 0;

            Assert.Equal((OneByOne(end, singles) - end.Filled).Count, said);
        }
    }

    [Fact]
    public void Of_an_XYZ_wing_nothing_is_said_that_is_so_of_all_of_them()
    {
        // Whatever sees pivot and both pincers lies in the pivot's block or line, and so one pincer in its block.
        var rule = new XYZWing().Id;
        var plans = OwnPuzzles.All.Select(puzzle => RunPlan.From(Board.Parse(puzzle), Ladder, [new(rule)], cancel: TestContext.Current.CancellationToken))
            .Where(plan => plan.Turns[0].Step is not null).Take(4).ToList();

        Assert.NotEmpty(plans);
        foreach (var plan in plans)
        {
            var wing = plan.Turns[0].Deduction!;
            var pivot = wing.Cells.First(part => part.Role == Role.Pivot).Cell;

            Assert.Contains(wing.PatternCells.Without(pivot), pincer => pincer.Block == pivot.Block);
            Assert.Contains(TalkingPoints.Of(plan), point => point is TalkingPoint.BivalueCells its && its.Rule == rule);
            Assert.DoesNotContain(TalkingPoints.Of(plan), point => point is TalkingPoint.PincerInBlock its && plan.Steps[its.At].Deduction.Rule == rule);
        }
    }

    [Fact]
    public void The_key_block_is_the_one_without_whose_digits_and_removals_most_steps_are_not_proved()
    {
        var ladder = Ladder.WithoutUniqueness(); // Those that assume one solution have a checker of their own.
        foreach (var plan in OwnPuzzles.All.Select(puzzle => RunPlan.From(Board.Parse(puzzle), ladder, [], cancel: TestContext.Current.CancellationToken)))
        {
            var counts = Enumerable.Range(1, 9).Select(number => NotProvedWithout(House.Block(number), plan)).ToList();
            var isAlone = counts.Max() > 1 && counts.Count(count => count == counts.Max()) == 1;

            Assert.Equal(
                isAlone ? [(counts.IndexOf(counts.Max()) + 1, counts.Max(), plan.Steps.Length)] : [],
                TalkingPoints.Of(plan).OfType<TalkingPoint.KeyBlock>().Select(its => (its.Block.Number, its.Steps, its.All)));
        }
    }

    [Fact]
    public void Of_a_route_of_one_step_no_block_is_named()
    {
        var plan = RunPlan.From(Board.Parse(OwnPuzzles.All[0]), Ladder, [], cancel: TestContext.Current.CancellationToken);
        var last = plan with { Start = plan.Steps[^1].Board, Steps = [plan.Steps[^1]] };

        Assert.DoesNotContain(TalkingPoints.Of(last), point => point is TalkingPoint.KeyBlock);
    }

    [Fact]
    public void A_pair_in_two_houses_is_a_pair_of_each()
    {
        foreach (var (plan, its) in Said.Value.Where(said => said.Point is TalkingPoint.PairInTwoHouses)
            .Select(said => (said.Plan, (TalkingPoint.PairInTwoHouses)said.Point)))
        {
            var board = plan.Steps[its.At].Board;
            foreach (var house in new[] { its.Line, its.Block })
            {
                Assert.True(house.Cells.ContainsAll(its.Cells));
                Assert.True(its.Cells.All(cell => its.Digits.ContainsAll(board[cell]))
                    || its.Digits.All(digit => house.Cells.Where(cell => board[cell].Contains(digit)).All(its.Cells.Contains)));
            }
        }
    }

    [Fact]
    public void Where_one_candidate_was_in_the_way_the_pattern_holds_without_it_and_not_with_it()
    {
        foreach (var (plan, its) in Said.Value.Where(said => said.Point is TalkingPoint.OneInTheWay)
            .Select(said => (said.Plan, (TalkingPoint.OneInTheWay)said.Point)))
        {
            var before = plan.Steps[its.Earlier].Board;
            var deduction = plan.Steps[its.At].Deduction;

            Assert.True(its.Earlier < its.At);
            Assert.False(ProofChecker.Check(before, deduction).Holds);
            Assert.True(ProofChecker.Check(before.Remove(CandidateSet.Of(its.InTheWay)), deduction).Holds || deduction.AssumesOneSolution);
        }
    }

    [Fact]
    public void A_rule_is_needed_only_where_easier_ones_do_not_lead_to_the_solution()
    {
        var start = Board.Parse("....9..737..3...1....4..8.2..21.....41..8..97.....31..2.1..7....5...8..468..2....");
        var detour = RunPlan.From(start, Ladder, [new(new("swordfish"), Timing.Early)], cancel: TestContext.Current.CancellationToken);
        var needed = RunPlan.From(start, Ladder, [new(new("xy-wing"), Timing.Late)], cancel: TestContext.Current.CancellationToken);

        Assert.Contains(detour.Steps, step => step.Deduction.Rule == new RuleId("swordfish"));
        Assert.DoesNotContain(TalkingPoints.Of(detour), point => point is TalkingPoint.Needs { Rule: var rule } && rule == new RuleId("swordfish"));
        Assert.Contains(TalkingPoints.Of(needed), point => point is TalkingPoint.Needs { Rule: var rule } && rule == new RuleId("xy-wing"));
    }

    [Fact]
    public void No_digit_is_the_first_to_be_finished_where_one_was_before()
    {
        var plan = RunPlan.From(Board.Parse("....9..737..3...1....4..8.2..21.....41..8..97.....31..2.1..7....5...8..468..2...."), Ladder, [], cancel: TestContext.Current.CancellationToken);
        var finished = plan.Steps.First(step => Digit.All.Any(digit => CountOf(step.Board, digit) == 9)).Board;

        Assert.Contains(TalkingPoints.Of(plan), point => point is TalkingPoint.FirstDigit);
        Assert.DoesNotContain(TalkingPoints.Of(RunPlan.From(finished, Ladder, [], cancel: TestContext.Current.CancellationToken)), point => point is TalkingPoint.FirstDigit);
    }

    [Fact]
    public void The_rarest_comes_first_and_what_can_be_said_of_every_route_last()
    {
        var table = new Rarity(1_000, new Dictionary<string, int> { ["needs-xy-wing"] = 25, ["fills-3"] = 500 }.ToImmutableDictionary());
        TalkingPoint[] points =
        [
            new TalkingPoint.KeyBlock(House.Block(1), 3, 9), new TalkingPoint.Fills(1, 3), new TalkingPoint.Needs(1, new("xy-wing")), new TalkingPoint.Fills(2, 60),
        ];

        Assert.Equal([points[3], points[2], points[1], points[0]], table.Rank(points));
        Assert.Equal([1_000, 40, 2, null], table.Rank(points).Select(table.OneIn));
    }

    [Fact]
    public void The_table_has_every_kind_that_can_be_rare_and_is_near_what_a_part_of_the_collection_gives()
    {
        var plans = OpenData.Puzzles("minimal-with-published-counts.tsv", oneOf: 100).AsParallel()
            .Select(puzzle => RunPlan.From(Board.Parse(puzzle), Ladder, [])).Where(plan => plan.IsComplete).ToList();

        Assert.All(Said.Value.Select(said => said.Point.Key).OfType<string>().Distinct(), key => Assert.True(Rarity.Counts.ContainsKey(key), key));
        foreach (var key in new[] { "block-decided", "needs-pointing", "needs-naked-pair", "pair-in-two-houses" })
        {
            var share = plans.Count(plan => TalkingPoints.Of(plan).Any(point => point.Key == key)) / (double)plans.Count;
            var published = Rarity.Counts[key] / (double)Rarity.Puzzles;
            Assert.Equal(published, share, tolerance: 4 * Math.Sqrt(published * (1 - published) / plans.Count));
        }
    }

    private static Role RoleOf(RunPlan plan, int at, Cell cell) => plan.Steps[at].Deduction.Cells.First(part => part.Cell == cell).Role;

    private static Board After(RunPlan plan, int at) => plan.Steps[at].Board.Apply(plan.Steps[at].Deduction);

    // What was filled in its houses may be open, and is told then.
    private static Deduction Told(Deduction step, Board board)
    {
        var absent = step.RestsOn;
        foreach (var house in step.Houses)
            absent |= CandidateSet.Of(board.Open & house.Cells, step.Digits) - board.Candidates;
        return step.RestingOn(absent);
    }

    private static int NotProvedWithout(House block, RunPlan plan)
    {
        var (board, count) = (plan.Start, 0);
        foreach (var step in plan.Steps.Select(step => step.Deduction))
        {
            if (!step.Places.All(board.Candidates.Contains) || !ProofChecker.Holds(board, Told(step, board)))
            {
                count++;
                continue;
            }

            board = board.Remove(CandidateSet.Of([.. step.Removes.Where(gone => !block.Cells.Contains(gone.Cell))]));
            foreach (var placed in step.Places.Where(placed => !block.Cells.Contains(placed.Cell)))
                board = board.Place(placed);
        }

        return count;
    }

    private static int CountOf(Board board, Digit digit) => CellSet.All.Count(cell => board.DigitAt(cell) == digit);

    private static CellSet OneByOne(Board board, IRule[] rules)
    {
        while (rules.SelectMany(rule => RuleCheck.Find(rule, board)).FirstOrDefault() is { } next)
            board = board.Apply(next);
        return board.Filled;
    }
}
