using System.Collections.Immutable;
using Companion.Engine.Rules;
using Companion.Session.Commands;
using Companion.Session.Scanning;
using Companion.Session.Views;

namespace Companion.Session.Tests.Ladders;

public sealed class LadderCutTests
{
    private readonly PlayedSession _session = PlayedSession.Of(Puzzles.Demo);

    [Fact]
    public void At_first_the_whole_ladder_is_looked_for_as_its_file_has_it()
    {
        var ladder = With("\"wings\": true", "\"wings\": false");

        Assert.Equal(ladder.AtFirst.Rules, _session.State.LadderCut.Of(ladder, hasOneSolution: true).Rules);
        Assert.NotEqual(ladder.Rules, ladder.AtFirst.Rules);
    }

    [Fact]
    public void Nothing_past_the_rule_that_the_ladder_is_stopped_at_is_found()
    {
        _session.Do(new StopLadder(new("hidden-pair")));
        var rungs = Rungs(_session);

        Assert.NotEmpty(rungs);
        Assert.All(rungs, rung => Assert.InRange(rung, 0, ShippedLadder.Ladder.RungOf(new("hidden-pair"))));
        Assert.NotEqual(rungs, Rungs(_session.Do(new StopLadder(null))));
    }

    [Fact]
    public void A_family_that_is_off_finds_nothing_and_finds_again_when_it_is_on()
    {
        var before = Families(_session);
        Assert.Contains("singles", before);

        Assert.Equal(before.Except(["singles"]), Families(_session.Do(new SwitchFamily("singles", IsOn: false))));
        Assert.Equal(before, Families(_session.Do(new SwitchFamily("singles", IsOn: true))));
    }

    [Fact]
    public void A_family_that_the_file_has_off_can_be_switched_on()
    {
        var ladder = With("\"singles\": true", "\"singles\": false");
        Assert.DoesNotContain(Open(_session, ladder), found => found.Rung < 3);

        _session.Do(new SwitchFamily("singles", IsOn: true));

        Assert.Contains(Open(_session, ladder), found => found.Rung < 3);
    }

    [Fact]
    public void Rules_that_assume_one_solution_are_left_out_until_it_is_known()
    {
        var cut = _session.State.LadderCut;

        Assert.Contains(cut.Of(ShippedLadder.Ladder, hasOneSolution: true).Rules, rule => rule.AssumesOneSolution);
        Assert.DoesNotContain(cut.Of(ShippedLadder.Ladder, hasOneSolution: false).Rules, rule => rule.AssumesOneSolution);
    }

    [Fact]
    public void A_loaded_puzzle_has_one_solution_and_what_rests_on_that_says_so()
    {
        var session = PlayedSession.Of(Puzzles.WithRectangle);
        var next = PanelViews.Next(Scanned(session, ShippedLadder.Ladder), ShippedVoice.Voice);
        var resting = next.Deductions.Where(open => open.AssumesOneSolution).Select(open => open.Rule.Value).ToList();

        Assert.NotEmpty(resting);
        Assert.All(resting, rule => Assert.True(ShippedLadder.Ladder[new(rule)].Rule.AssumesOneSolution));
        Assert.Equal(resting, next.Deductions.Select(open => open.Rule.Value).Where(rule => ShippedLadder.Ladder[new(rule)].Rule.AssumesOneSolution));

        session.Do(new SwitchFamily("uniqueness", IsOn: false));
        Assert.DoesNotContain(Open(session, ShippedLadder.Ladder), found => found.Deduction.AssumesOneSolution);
    }

    [Fact]
    public void A_cut_holds_for_the_next_puzzle_and_is_not_undone_with_an_entry()
    {
        _session.Do(new StopLadder(new("xy-wing")), new LoadPuzzle(Puzzles.Easy, "", "", ""), new Undo());

        Assert.Equal("xy-wing", _session.State.LadderCut.Last?.Value);
    }

    [Fact]
    public void What_is_cut_already_is_no_event()
    {
        _session.Do(new StopLadder(new("xy-wing")), new SwitchFamily("fish", IsOn: false));

        Assert.Empty(_session.Try(new StopLadder(new("xy-wing"))).Events);
        Assert.Empty(_session.Try(new SwitchFamily("fish", IsOn: false)).Events);
    }

    [Fact]
    public void A_scan_holds_no_longer_once_the_ladder_is_cut()
    {
        var before = _session.State;
        Assert.False(Scan.HoldsFor(before, _session.Do(new StopLadder(new("xy-wing"))).State));
        before = _session.State;
        Assert.False(Scan.HoldsFor(before, _session.Do(new SwitchFamily("fish", IsOn: false)).State));
    }

    [Fact]
    public void Rules_and_families_of_another_days_ladder_count_for_nothing()
    {
        _session.Do(new StopLadder(new("a-rule-of-old")), new SwitchFamily("a family of old", IsOn: false));

        Assert.Equal(ShippedLadder.Ladder.Rules, _session.State.LadderCut.Of(ShippedLadder.Ladder, hasOneSolution: true).Rules);
        Assert.Null(View(_session).Last);
    }

    [Fact]
    public void The_view_has_every_rung_with_its_name_and_the_families_that_have_one()
    {
        var view = View(_session.Do(new StopLadder(new("xy-wing")), new SwitchFamily("fish", IsOn: false)));

        Assert.Equal("xy-wing", view.Last?.Value);
        Assert.Equal(ShippedLadder.Ladder.Rules.Select(rule => rule.Id), view.Rungs.Select(rung => rung.Rule));
        Assert.Equal(
            new RungView(new("x-wing"), "X-wing", "fish", IsOn: false), view.Rungs.Single(rung => rung.Rule.Value == "x-wing"));
        Assert.Equal("XY-wing", view.Rungs.Last(rung => rung.IsOn).Name);
        Assert.Equal([new FamilyView("fish", IsOn: false, AssumesOneSolution: false)], view.Families.Where(family => !family.IsOn));
        Assert.Equal(["uniqueness"], view.Families.Where(family => family.AssumesOneSolution).Select(family => family.Name));
        Assert.Subset(
            view.Rungs.Select(rung => rung.Family).ToHashSet(), view.Families.Select(family => family.Name).ToHashSet());
    }

    private static LadderView View(PlayedSession session) => LadderView.Of(session.State, ShippedLadder.Ladder, ShippedVoice.Voice);

    private static ScanResult Scanned(PlayedSession session, Ladder ladder) =>
        Scan.Of(session.State, ladder, null, TestContext.Current.CancellationToken);

    private static ImmutableArray<Found> Open(PlayedSession session, Ladder ladder) => Scanned(session, ladder).Open;

    private static List<int> Rungs(PlayedSession session) =>
        [.. Open(session, ShippedLadder.Ladder).Select(found => found.Rung)];

    private static List<string> Families(PlayedSession session) =>
        [.. Open(session, ShippedLadder.Ladder).Select(found => ShippedLadder.Ladder[found.Deduction.Rule].Family).Distinct()];

    private static Ladder With(string text, string instead)
    {
        var json = ShippedLadder.Json.Replace(text, instead, StringComparison.Ordinal);
        Assert.NotEqual(ShippedLadder.Json, json);
        return Ladder.Parse(json);
    }
}
