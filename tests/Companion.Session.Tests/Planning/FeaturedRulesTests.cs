using Companion.Engine.Planning;
using Companion.Session.Commands;
using Companion.Session.Events;
using Companion.Session.Views;

namespace Companion.Session.Tests.Planning;

public sealed class FeaturedRulesTests
{
    private static readonly Feature Wing = new(new("xy-wing"));
    private static readonly Feature Swordfish = new(new("swordfish"), Timing.Early);

    private readonly PlayedSession _session = PlayedSession.Of(Puzzles.Demo);

    [Fact]
    public void They_are_set_in_order_and_shown_to_the_panels_with_when_they_are_wanted()
    {
        _session.Do(Features(Swordfish, Wing));

        Assert.Equal([Swordfish, Wing], _session.State.Plan.Featured.Items);
        Assert.Equal(
            [new FeaturedRule(new("swordfish"), IsEarly: true), new FeaturedRule(new("xy-wing"), IsEarly: false)],
            PanelViews.Desk(_session.State, null, null, ShippedVoice.Voice).Featured);
    }

    [Fact]
    public void They_go_with_their_puzzle_and_come_back_with_it()
    {
        _session.Do(Features(Wing), new LoadPuzzle(Puzzles.Easy, "", "", ""));
        Assert.Empty(_session.State.Plan.Featured.Items);

        _session.Do(Features(Swordfish)).Undo();
        Assert.Equal([Wing], _session.State.Plan.Featured.Items);

        _session.Redo();
        Assert.Equal([Swordfish], _session.State.Plan.Featured.Items);
    }

    [Fact]
    public void A_puzzle_can_bring_its_own()
    {
        _session.Do(new LoadPuzzle(Puzzles.Easy, "", "", "") { Featured = new([Wing]) });

        Assert.Equal([Wing], _session.State.Plan.Featured.Items);
    }

    [Fact]
    public void An_undo_of_an_entry_leaves_them_alone()
    {
        _session.Place("r1c3", 1).Do(Features(Wing)).Undo();

        Assert.Equal([Wing], _session.State.Plan.Featured.Items);
    }

    [Fact]
    public void The_same_again_is_no_event()
    {
        _session.Do(Features(Wing));

        Assert.Empty(_session.Try(Features(Wing)).Events);
        Assert.IsType<RulesFeatured>(Assert.Single(_session.Try(Features()).Events));
    }

    [Fact]
    public void More_than_five_or_one_twice_are_refused_alone_and_with_a_puzzle()
    {
        var many = Features([.. Enumerable.Range(0, 6).Select(index => new Feature(new($"rule-{index}")))]);
        var twice = Features(Wing, Wing with { Timing = Timing.Early });

        Assert.Equal("At most 5 rules can be featured: leave some out.", _session.Refused(many));
        Assert.Equal("Each rule is featured once: leave out the second one.", _session.Refused(twice));
        Assert.Equal(
            "Each rule is featured once: leave out the second one.",
            _session.Refused(new LoadPuzzle(Puzzles.Easy, "", "", "") { Featured = twice.Featured }));
    }

    [Fact]
    public void Without_a_puzzle_there_is_nothing_to_feature() =>
        Assert.Equal("Load a puzzle first.", new PlayedSession().Refused(Features(Wing)));

    private static FeatureRules Features(params Feature[] features) => new(new([.. features]));
}
