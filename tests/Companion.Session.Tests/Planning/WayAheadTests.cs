using Companion.Engine.Planning;
using Companion.Engine.Proofs;
using Companion.Session.Commands;
using Companion.Session.Planning;
using Companion.Session.Tests.Ladders;

namespace Companion.Session.Tests.Planning;

public sealed class WayAheadTests
{
    private static readonly Feature Wing = new(new("xy-wing"));

    private readonly PlayedSession _session = PlayedSession.Of(Puzzles.Demo).Do(new FeatureRules(new([Wing])));

    [Fact]
    public void The_way_leads_from_the_board_as_it_is_to_the_full_grid_by_the_featured_rule()
    {
        var first = Ahead().Plan!;
        Assert.True(first.IsComplete);
        Assert.Single(first.Steps, step => step.IsFeatured);

        var single = first.Steps.First(step => !step.Deduction.Places.IsEmpty).Deduction.Places.First();
        _session.Do(new PlaceDigit(single.Cell, single.Digit));

        var next = Ahead().Plan!;
        Assert.Equal(single.Digit, next.Start.DigitAt(single.Cell));
        Assert.DoesNotContain(next.Steps, step => step.Deduction.Places.Contains(single));
        Assert.True(next.IsComplete);
    }

    [Fact]
    public void A_featured_rule_that_was_said_or_used_is_not_featured_again()
    {
        var wing = Ahead().Plan!.Turns.Single().Deduction!;
        Assert.Equal([Wing], WayAhead.Waiting(_session.State));

        var before = _session.State;
        _session.Do(new MarkUsed(wing));

        Assert.Empty(WayAhead.Waiting(_session.State));
        Assert.False(WayAhead.HoldsFor(before, _session.State));
        Assert.Empty(Ahead().Plan!.Turns);

        _session.Do(new LoadPuzzle(Puzzles.Demo, "", "", "") { Featured = new([Wing]) });
        Assert.Equal([Wing], WayAhead.Waiting(_session.State));
    }

    [Fact]
    public void A_featured_rule_that_an_entry_needed_is_not_featured_again_unless_the_entry_is_taken_back()
    {
        var proof = new Attribution.Proved([Ahead().Plan!.Turns.Single().Deduction!], Wing.Rule, 1, null);
        _session.Place("r3c2", 6).Do(new AttributeEntry(_session.State.History.Last!.Number, proof));
        Assert.Empty(WayAhead.Waiting(_session.State));

        _session.Undo();
        Assert.Equal([Wing], WayAhead.Waiting(_session.State));
    }

    [Fact]
    public void A_rule_that_the_ladder_is_cut_below_is_left_out()
    {
        _session.Do(new StopLadder(new("hidden-pair")));

        var plan = Ahead().Plan!;
        Assert.Empty(plan.Turns);
        Assert.False(plan.IsComplete);
    }

    [Fact]
    public void From_a_wrong_board_there_is_no_way_and_none_without_a_puzzle()
    {
        _session.Place("r1c3", 8);
        Assert.NotEqual(8, _session.State.Grid.Puzzle!.Solution[Engine.Cell.Parse("r1c3")].Value);

        Assert.Equal(("There is no way on from this board: look at Watch.", null), (Ahead().Blocked, Ahead().Plan));
        Assert.Equal("Load a puzzle first.", WayAhead.Of(new PlayedSession().State, ShippedLadder.Ladder, TestContext.Current.CancellationToken).Blocked);
    }

    [Fact]
    public void A_plan_holds_on_while_nothing_changes_that_it_goes_by()
    {
        var before = _session.State;
        Assert.True(WayAhead.HoldsFor(before, _session.Do(new CueText("Thanks")).State));
        Assert.False(WayAhead.HoldsFor(before, _session.Do(new FeatureRules(default)).State));
    }

    private WayAhead Ahead() => WayAhead.Of(_session.State, ShippedLadder.Ladder, TestContext.Current.CancellationToken);
}
