using Companion.Engine;
using Companion.Engine.Planning;
using Companion.Engine.Proofs;
using Companion.Engine.Rules;
using Companion.Session.Boards;
using Companion.Session.Commands;
using Companion.Session.Planning;

using Companion.Session.Views;

namespace Companion.Session.Tests.Planning;

public sealed class OutlookTests
{
    private static readonly RuleId Wing = new("xy-wing");

    private readonly PlayedSession _session = PlayedSession.Of(Puzzles.Demo).Do(Features(Wing));

    [Fact]
    public void The_steps_to_a_featured_rule_become_fewer_as_they_are_made_until_it_is_open()
    {
        var first = _session.LookAhead();
        var comings = new List<Coming> { Of(first).Coming };
        for (var prospect = Of(first); prospect.Coming != Coming.Open; prospect = Of(_session.LookAhead()))
        {
            var step = prospect.Forecast!.Before[0];
            _session.Carry(step);
            var next = Of(_session.LookAhead());
            Assert.True(next.Forecast!.Before.Length < prospect.Forecast.Before.Length);
            comings.Add(next.Coming);
        }

        Assert.Equal([Coming.Ahead, Coming.Near, Coming.Open], comings.Distinct());
    }

    [Fact]
    public void It_is_shown_once_it_was_said_or_used_and_waits_again_when_that_does_not_count_any_more()
    {
        _session.OpenWing();
        var wing = Of(_session.LookAhead()).Forecast!.First!;
        _session.Do(new MarkUsed(wing));

        Assert.Equal((Coming.Shown, null), (Of(_session.LookAhead()).Coming, Of(_session.LookAhead()).Forecast));
    }

    [Fact]
    public void It_is_off_where_the_ladder_is_cut_below_it()
    {
        _session.Do(new StopLadder(new("hidden-pair")));

        Assert.Equal(Coming.Off, Of(_session.LookAhead()).Coming);
    }

    [Fact]
    public void It_is_passed_once_the_way_leads_round_it_and_an_undo_takes_that_back()
    {
        _session.OpenWing();
        var open = _session.State.History.Last!.Number;
        Assert.Equal((Coming.Open, open, false), Told(_session.LookAhead()));

        _session.PassWing();
        var passed = _session.State.History.Last!.Number;
        Assert.Equal((Coming.Never, passed, true), Told(_session.LookAhead()));

        _session.PlaceNext();
        Assert.Equal((Coming.Never, passed, true), Told(_session.LookAhead()));

        while (_session.State.History.Last!.Number > open)
            _session.Undo();
        Assert.Equal((Coming.Open, open, false), Told(_session.LookAhead()));
    }

    [Fact]
    public void What_was_ahead_at_the_start_is_passed_too_though_nobody_looked_then()
    {
        _session.OpenWing();
        _session.PassWing();

        Assert.True(Of(_session.LookAhead()).IsPassed);
    }

    [Fact]
    public void A_rule_that_never_came_is_never_passed()
    {
        var never = Ladder.Standard.Rules.Select(rule => rule.Id).First(rule => Of(_session.Feature(rule).LookAhead()).Coming == Coming.Never);
        Assert.Equal((Coming.Never, 0, false), Told(_session.Feature(never).LookAhead()));

        for (var entries = 0; entries < 5; entries++)
            Assert.Equal((Coming.Never, 0, false), Told(_session.PlaceNext().LookAhead()));
    }

    [Fact]
    public void Another_loading_begins_anew()
    {
        _session.OpenWing();
        _session.PassWing();
        _session.LookAhead();
        _session.Do(new LoadPuzzle(Puzzles.Demo, "", "", "") { Featured = new([new(Wing)]) });

        Assert.Equal((Coming.Ahead, _session.State.History.Last!.Number, false), Told(_session.LookAhead()));
    }

    [Fact]
    public void From_a_wrong_board_nothing_is_to_be_expected_and_a_slip_put_right_forgets_nothing()
    {
        _session.OpenWing();
        var before = Told(_session.LookAhead());
        _session.Place("r1c3", 8);

        Assert.Equal("There is no way on from this board: look at Watch.", _session.LookAhead().Blocked);
        Assert.Empty(_session.LookAhead().Prospects);
        Assert.Equal(before, Told(_session.Undo().LookAhead()));
        Assert.Equal("Load a puzzle first.", new PlayedSession().LookAhead().Blocked);
    }

    [Theory]
    [InlineData(2)]
    [InlineData(4)]
    public void In_any_session_what_is_said_of_each_rule_is_so_on_the_board(int seed) => RandomSession.Of(seed, commands: 25, session =>
    {
        session.Feature(new("naked-pair"), Wing, new("x-wing"), new("pointing"));
        var outlook = session.LookAhead();
        var known = KnownBoard.Of(session.State).Value;
        Assert.Equal(outlook.Blocked is null ? 4 : 0, outlook.Prospects.Length);
        foreach (var prospect in outlook.Prospects.Where(prospect => prospect.Forecast is not null))
        {
            var isOpen = Ladder.Standard[prospect.Rule].IsOpenOn(known!, TestContext.Current.CancellationToken);
            Assert.Equal(isOpen, prospect.Coming == Coming.Open);
            Assert.Equal(prospect.Coming is Coming.Open or Coming.Near or Coming.Ahead, prospect.Forecast!.First is not null);
            Assert.True(prospect.Coming == Coming.Never || !prospect.IsPassed);
            Assert.Contains(prospect.Since, session.State.History.Made.Select(step => step.Number).Append(0));
        }
    });

    [Fact]
    public void The_view_has_names_steps_cells_to_watch_and_what_is_in_the_way()
    {
        _session.Do(Features(Wing, new("swordfish")));
        _session.Do(new StopLadder(Wing));
        var outlook = _session.LookAhead();
        var view = ForecastView.Of(outlook, ShippedVoice.Voice);

        var forecast = Of(outlook).Forecast!;
        var line = view.Rules[0];
        Assert.Equal(("XY-wing", Coming.Ahead, forecast.Before.Length, forecast.AtLeast), (line.Name, line.Coming, line.Steps, line.AtLeast));
        Assert.Equal(forecast.First!.PatternCells, CellSet.Of([.. line.Watch]));
        Assert.Equal(forecast.NearMisses.Select(miss => miss.InTheWay), line.NearMisses.Select(miss => new Candidate(miss.Cell, miss.Digit)));
        Assert.Equal((Coming.Off, null, null, 0, 0), (view.Rules[1].Coming, view.Rules[1].Steps, view.Rules[1].AtLeast, view.Rules[1].Watch.Length, view.Rules[1].NearMisses.Length));
    }

    [Fact]
    public void The_view_of_a_rule_that_is_open_says_no_steps_and_shows_its_pattern()
    {
        _session.OpenWing();
        var line = Assert.Single(ForecastView.Of(_session.LookAhead(), ShippedVoice.Voice).Rules);

        Assert.Equal((Coming.Open, 0, 3), (line.Coming, line.Steps, line.Watch.Length));
    }

    private static Prospect Of(Outlook outlook) => outlook.Prospects[0];

    private static (Coming Coming, int Since, bool IsPassed) Told(Outlook outlook) =>
        (Of(outlook).Coming, Of(outlook).Since, Of(outlook).IsPassed);

    private static FeatureRules Features(params RuleId[] rules) => new(new([.. rules.Select(rule => new Feature(rule))]));
}
