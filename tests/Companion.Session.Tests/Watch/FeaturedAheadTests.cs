using System.Text.RegularExpressions;
using Companion.Engine.Rules;
using Companion.Session.Commands;
using Companion.Session.Planning;
using Companion.Session.Tests.Planning;
using Companion.Session.Views;

namespace Companion.Session.Tests.Watch;

public sealed partial class FeaturedAheadTests
{
    private const string Open = "The featured XY-wing has come open: show it before it is passed.";
    private const string Near = "The featured XY-wing is at most two easier steps away: have your words ready.";
    private const string Passed =
        "The featured XY-wing was to be expected and was not found on the way that was tried from here: undo if it is to be shown.";

    private readonly PlayedSession _session = PlayedSession.Of(Puzzles.Demo).Feature(new Engine.Proofs.RuleId("xy-wing"));

    [Fact]
    public void That_it_is_near_is_said_from_two_easier_steps_away_on_and_in_the_same_words_for_one()
    {
        var said = new List<(int Steps, string[] Texts)>();
        for (var forecast = Forecast(); !forecast.IsOpen; forecast = Forecast())
        {
            said.Add((forecast.Before.Length, _session.Texts(WatchKind.FeaturedNear)));
            _session.Carry(forecast.Before[0]);
        }

        Assert.Contains(said, each => each.Steps > 2);
        Assert.Contains(said, each => each.Steps == 1);
        Assert.All(said, each => Assert.Equal(each.Steps > 2 ? [] : [Near], each.Texts));
        Assert.Empty(_session.Texts(WatchKind.FeaturedNear));
    }

    [Fact]
    public void That_it_has_come_open_is_said_with_its_entry_for_as_long_as_it_is_and_not_after_it_was_shown()
    {
        _session.OpenWing();
        var note = _session.Note(WatchKind.FeaturedOpen);
        Assert.Equal((Open, 0, _session.State.History.Last!.Entry.At), (note.Text, note.Entries, note.Since!.Value));

        // A block mark in a single place says nothing.
        _session.Block("r1c3", 1).Block("r1c3", 1);
        Assert.Equal(note with { Entries = 2 }, _session.Note(WatchKind.FeaturedOpen) with { Cells = note.Cells });

        _session.Do(new MarkUsed(Forecast().First!));
        Assert.Empty(_session.Texts(WatchKind.FeaturedOpen));
    }

    [Fact]
    public void That_it_has_been_passed_is_said_once_and_taken_back_by_undo()
    {
        _session.OpenWing();
        _session.Warnings();
        var open = _session.State.History.Last!.Number;
        _session.PassWing();
        Assert.Equal([Passed], _session.Texts(WatchKind.FeaturedPassed));
        Assert.Empty(_session.Texts(WatchKind.FeaturedOpen));

        while (_session.State.History.Last!.Number > open)
            _session.Undo();
        Assert.Empty(_session.Texts(WatchKind.FeaturedPassed));
        Assert.Equal([Open], _session.Texts(WatchKind.FeaturedOpen));
    }

    [Fact]
    public void While_the_outlook_is_of_the_entry_before_the_same_is_said_and_of_another_puzzle_nothing_is()
    {
        var outlook = _session.OpenWing().LookAhead();
        _session.Block("r1c3", 1);
        Assert.Equal([Open], Texts(outlook));

        _session.Do(new LoadPuzzle(Puzzles.Demo, "", "", "") { Featured = _session.State.Plan.Featured });
        Assert.Empty(Texts(outlook));
    }

    [Theory]
    [InlineData(2)]
    [InlineData(4)]
    public void In_any_session_they_name_a_featured_rule_and_no_cell_no_digit_and_nothing_of_where_it_is(int seed)
    {
        var (kinds, rules) = (new HashSet<WatchKind>(), new Engine.Proofs.RuleId[] { new("naked-pair"), new("xy-wing"), new("pointing"), new("hidden-pair") });
        RandomSession.Of(seed, commands: 25, session =>
        {
            session.Feature(rules);
            foreach (var note in session.Warnings().Where(note => note.Kind is WatchKind.FeaturedOpen or WatchKind.FeaturedNear or WatchKind.FeaturedPassed))
            {
                kinds.Add(note.Kind);
                Assert.Empty(note.Cells);
                Assert.DoesNotMatch(Telling(), note.Text);
                Assert.Single(rules, rule => note.Text.Contains($"The featured {ShippedVoice.Voice.Wording.NameOf(rule)} ", StringComparison.Ordinal));
                Assert.InRange(note.Entries, 0, session.State.Entries);
            }
        });

        Assert.NotEmpty(kinds);
    }

    [Fact]
    public void No_rule_of_the_ladder_is_called_by_a_digit_or_a_cell() =>
        Assert.All(Ladder.Whole.Rules, rule => Assert.DoesNotMatch(Telling(), ShippedVoice.Voice.Wording.NameOf(rule.Id)));

    private Engine.Planning.Forecast Forecast() => _session.LookAhead().Prospects[0].Forecast!;

    private string[] Texts(Outlook outlook) =>
        [.. Session.Watch.Warnings.Of(_session.State, null, outlook, ShippedVoice.Voice)
            .Where(note => note.Kind == WatchKind.FeaturedOpen).Select(note => note.Text)];

    // A cell, or a digit in figures or in words; "two" is how many steps it is away.
    [GeneratedRegex(@"\d|\b(one|three|four|five|six|seven|eight|nine)\b")]
    private static partial Regex Telling();
}
