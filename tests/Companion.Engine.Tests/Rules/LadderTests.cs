using Companion.Engine.Proofs;
using Companion.Engine.Rules;

namespace Companion.Engine.Tests.Rules;

public sealed class LadderTests
{
    [Fact]
    public void The_standard_ladder_goes_from_full_house_to_nets() => Assert.Equal(
        "full-house hidden-single naked-single pointing claiming two-block-claiming naked-pair hidden-pair naked-triple "
        + "hidden-triple x-wing xy-wing xyz-wing remote-pairs two-strong-links w-wing simple-colouring empty-rectangle "
        + "finned-x-wing swordfish finned-swordfish wxyz-wing naked-quad hidden-quad jellyfish finned-jellyfish "
        + "single-digit-chain xy-chain continuous-loop alternating-inference-chain grouped-chain two-sector-disjoint-subsets "
        + "almost-locked-set-ring almost-locked-set-pair almost-locked-set-triple almost-locked-set-blossom almost-locked-set-chain "
        + "cell-forcing-chain house-forcing-chain joint-forcing-chain forcing-net nested-forcing-net",
        string.Join(' ', Ladder.Standard.Rules.Select(rule => rule.Id)));

    [Fact]
    public void The_whole_ladder_has_the_rules_that_assume_one_solution_too() => Assert.Equal(
        "unique-rectangle unique-rectangle-with-extra-digit hidden-unique-rectangle unique-rectangle-with-subset "
        + "bivalue-universal-grave",
        string.Join(' ', Ladder.Whole.Rules.Select(rule => rule.Id).Except(Ladder.Standard.Rules.Select(rule => rule.Id))));

    [Fact]
    public void Without_uniqueness_a_ladder_keeps_its_other_rules_in_their_order()
    {
        Assert.Equal(Ladder.Standard.Rules, Ladder.Whole.WithoutUniqueness().Rules);
        Assert.DoesNotContain(Ladder.Standard.Rules, rule => rule.AssumesOneSolution);
        Assert.Equal(
            Ladder.Whole.Rules.Where(rule => !rule.AssumesOneSolution).Select(rule => rule.Id),
            Ladder.Standard.Rules.Select(rule => rule.Id));
    }

    [Fact]
    public void A_deduction_says_that_it_assumes_one_solution_just_as_its_rule_does()
    {
        foreach (var (board, _) in SolvingPath.OwnPositions.Where((_, place) => place % 10 == 0))
        {
            foreach (var rule in Ladder.Whole.Rules)
                Assert.All(RuleCheck.Find(rule, board), found => Assert.Equal(rule.AssumesOneSolution, found.AssumesOneSolution));
        }
    }

    [Fact]
    public void A_rung_is_the_place_of_a_rule_from_the_easiest_up()
    {
        Assert.Equal(0, Ladder.Standard.RungOf(new("full-house")));
        Assert.Equal(Ladder.Whole.Rules.Length - 1, Ladder.Whole.RungOf(Ladder.Whole.Rules[^1].Id));
        Assert.Throws<ArgumentException>(() => Ladder.Standard.RungOf(new("no-such-rule")));
    }

    [Fact]
    public void A_rung_keeps_its_place_when_others_are_left_out()
    {
        var cut = Ladder.Whole.WithoutUniqueness().UpTo(new("swordfish"));

        Assert.Equal(Ladder.Whole.RungOf(new("swordfish")), cut.RungOf(new("swordfish")));
        Assert.Equal(cut.Rules, cut.Rungs.Select(rung => rung.Rule));
    }

    [Fact]
    public void Up_to_a_rule_keeps_that_rule_and_all_that_are_easier()
    {
        var cut = Ladder.Whole.UpTo(new("claiming"));

        Assert.Equal("full-house hidden-single naked-single pointing claiming", string.Join(' ', cut.Rules.Select(rule => rule.Id)));
        Assert.False(cut.Has(new("naked-pair")));
        Assert.Throws<ArgumentException>(() => cut.UpTo(new("naked-pair")));
    }

    [Fact]
    public void Without_a_family_none_of_its_rules_is_left_and_all_others_are()
    {
        var whole = ShippedLadder.Ladder;
        var cut = whole.Without(["fish", "wings", "no such family"]);

        Assert.Equal(whole.Rungs.Where(rung => rung.Family is not ("fish" or "wings")), cut.Rungs);
        Assert.Equal(whole.Families, cut.Families);
    }

    [Fact]
    public void A_scan_finds_what_each_rule_but_the_last_resorts_finds_in_the_order_of_the_ladder()
    {
        var rules = Ladder.Whole.Rules.Where(rule => rule.Effort != Effort.LastResort).ToList();
        foreach (var (board, _) in SolvingPath.OwnPositions.Take(200))
            Assert.Equal(rules.SelectMany(rule => RuleCheck.Find(rule, board)), RuleCheck.Scan(board));
    }

    [Fact]
    public void Of_the_last_resorts_the_first_that_finds_anything_is_the_last_to_be_tried()
    {
        var rules = Ladder.Standard.Rules.Where(rule => rule.Effort == Effort.LastResort).ToList();
        foreach (var board in NetPositions.All.Where((_, place) => place % 6 == 0))
        {
            var expected = rules.Select(rule => RuleCheck.Find(rule, board)).FirstOrDefault(found => found.Count > 0);
            Assert.Equal(expected ?? [], Ladder.Standard.Scan(board, Effort.LastResort, TestContext.Current.CancellationToken));
        }
    }

    [Fact]
    public void The_scans_by_effort_together_are_the_whole_scan()
    {
        foreach (var (board, _) in SolvingPath.OwnPositions.Take(200))
        {
            var parts = new[] { Effort.Pattern, Effort.Search }.SelectMany(effort => Ladder.Whole.Scan(board, effort));
            Assert.Equal(Sorted(RuleCheck.Scan(board)), Sorted(parts));
        }
    }

    [Fact]
    public void The_easiest_deduction_is_the_first_of_the_scan_or_none()
    {
        foreach (var (board, _) in SolvingPath.OwnPositions.Take(500))
        {
            var all = RuleCheck.Scan(board);
            if (all.Count == 0)
                all = Ladder.Whole.Scan(board, Effort.LastResort, TestContext.Current.CancellationToken);
            Assert.Equal(all.Count > 0 ? all[0] : null, Ladder.Whole.Easiest(board, TestContext.Current.CancellationToken));
        }

        Assert.Null(Ladder.Standard.Easiest(Board.Blank, TestContext.Current.CancellationToken));
    }

    [Fact]
    public void A_scan_that_is_cancelled_stops()
    {
        using var cancel = new CancellationTokenSource();
        cancel.Cancel();

        Assert.Throws<OperationCanceledException>(() => Ladder.Standard.Scan(Board.Blank, cancel.Token));
        Assert.Throws<OperationCanceledException>(() => Ladder.Standard.Easiest(Board.Blank, cancel.Token));
    }

    private static IEnumerable<string> Sorted(IEnumerable<Deduction> deductions) =>
        deductions.Select(deduction => deduction.ToString()).Order(StringComparer.Ordinal);
}
