using Companion.Engine;
using Companion.Engine.Proofs;
using Companion.Session.Audience;
using Companion.Session.Commands;
using Companion.Session.Events;
using Companion.Session.Recording;
using Companion.Session.State;

namespace Companion.Session.Tests.Shows;

public sealed class ShowTests
{
    [Fact]
    public void A_new_show_begins_with_an_empty_board_and_nothing_on_air()
    {
        var session = Evening().Do(new BeginShow("Second evening"));

        var state = session.State;
        Assert.Equal(Grid.Blank, state.Grid);
        Assert.Equal((null, null, 0, null), (state.OnAir, state.Standby, state.CalledOnAir.Count, state.Asks.Code));
        Assert.Equal((0, 0, 0, 0), (state.Used.Count, state.Cues.CallOuts.Count, state.Plans.Count, state.NotesOfPuzzles.Count));
        Assert.False(state.CoHostMayAir);
        Assert.Equal(("Second evening", RecordingPhase.None), (state.ShowTitle, state.Recording.Phase));
    }

    [Fact]
    public void What_is_set_for_the_broadcast_stays_and_the_audience_waits_outside()
    {
        var session = Evening();
        var before = session.State;
        session.Do(new BeginShow(""));

        Assert.Equal(before.Scenes, session.State.Scenes);
        Assert.Equal(before.LadderCut, session.State.LadderCut);
        Assert.Equal((before.Asks.Limits, before.Asks.Delay), (session.State.Asks.Limits, session.State.Asks.Delay));
        Assert.Equal(AudienceDoor.Closed, session.State.Asks.Door);
    }

    [Fact]
    public void An_undo_does_not_reach_over_the_beginning_of_a_show()
    {
        var session = Evening().Do(new BeginShow(""), new LoadPuzzle(Puzzles.Hard, "", "", ""));

        Assert.Contains("nothing to undo", session.Refused(new Undo()), StringComparison.Ordinal);
    }

    [Fact]
    public void Who_ends_the_show_and_loads_a_puzzle_goes_on_with_another_show()
    {
        var session = Evening();
        session.Do(new EndShow());
        Assert.True(session.State.IsOver);
        Assert.NotNull(session.State.Grid.Puzzle);

        session.Do(new LoadPuzzle(Puzzles.Hard, "Next", "", ""));

        Assert.False(session.State.IsOver);
        Assert.NotEqual(0, session.State.Show);
        Assert.Equal((null, null), (session.State.OnAir, session.State.History.Last));
    }

    [Fact]
    public void The_end_of_a_show_ends_its_recording_however_late_the_next_one_begins()
    {
        var session = PlayedSession.Of(Puzzles.Easy).Do(new StartRecording()).Place("r1c1", 4).Do(new EndShow());
        Assert.Equal(RecordingPhase.Stopped, session.State.Recording.Phase);
        Assert.Equal(2, Companion.Session.Shows.StoredShow.Replay(session.Log).VideoLength.TotalSeconds);

        // In logs of versions whose recording ran on, it was stopped when the next show began.
        var late = Companion.Session.Shows.StoredShow.Replay([.. session.Log, new RecordingStopped(session.Now.AddMinutes(7))]);
        Assert.Equal(2, late.VideoLength.TotalSeconds);
    }

    [Fact]
    public void A_puzzle_that_is_refused_begins_no_show()
    {
        var session = Evening().Do(new EndShow());

        session.Refused(new LoadPuzzle("no puzzle", "", "", ""));

        Assert.Equal(0, session.State.Show);
    }

    [Fact]
    public void Numbers_of_entries_and_loadings_name_one_thing_in_the_whole_log()
    {
        var session = Evening();
        var (entries, loadings) = (session.State.Entries, session.State.Loadings);

        session.Do(new BeginShow(""), new LoadPuzzle(Puzzles.Hard, "", "", "")).Strike("r1c2", 1);

        Assert.Equal(entries + 1, session.State.History.Last?.Number);
        Assert.Equal(loadings + 1, session.State.Grid.Loading);
    }

    [Fact]
    public void A_recording_that_runs_stops_with_its_show()
    {
        var session = Evening().Do(new StartRecording(), new BeginShow(""));

        Assert.Single(session.Log, happened => happened is RecordingStopped);
        Assert.IsType<RecordingStopped>(session.Log[session.Log.ToList().FindIndex(happened => happened is ShowBegun) - 1]);
    }

    [Fact]
    public void A_reopened_show_goes_on_where_it_was_with_nothing_on_air()
    {
        var session = Evening().Attribute();
        Event[] first = [.. session.Log];
        var before = session.State;
        session.Do(new BeginShow(""), new LoadPuzzle(Puzzles.Hard, "", "", "")).Strike("r1c2", 1);
        var (entries, scenes) = (session.State.Entries, session.State.Scenes);

        session.Do(new ReopenShow("Evening", new([.. first])));

        var state = session.State;
        Assert.Equal((before.Grid.Placed, before.Grid.Credit), (state.Grid.Placed, state.Grid.Credit));
        Assert.Equal((null, null, null, false), (state.OnAir, state.Standby, state.Asks.Code, state.CoHostMayAir));
        Assert.Equal((AudienceDoor.Closed, scenes), (state.Asks.Door, state.Scenes));
        Assert.Equal(before.History.Made.Select(step => step.Number + entries), state.History.Made.Select(step => step.Number));
        Assert.NotEmpty(before.Attributions);
        Assert.Equal(
            before.Attributions.Select(found => (found.Entry + entries, found.Attribution)),
            state.Attributions.Select(found => (found.Entry, found.Attribution)));
        session.Undo();
        Assert.Equal(before.History.Last?.Grid.Placed, session.State.Grid.Placed);
    }

    [Fact]
    public void A_show_that_was_reopened_can_be_reopened_again()
    {
        var session = Evening().Do(new ReopenShow("Once", new([.. Evening().Log])));
        Event[] once = [.. session.Log.SkipWhile(happened => happened is not ShowBegun)];
        var before = session.State;

        session.Do(new ReopenShow("Twice", new([.. once])));

        Assert.Equal((before.Grid.Placed, "Twice"), (session.State.Grid.Placed, session.State.ShowTitle));
    }

    [Theory]
    [InlineData("two\nlines", "one line")]
    [InlineData("121", "120 characters")]
    public void A_title_that_is_no_title_is_refused_with_the_way_out(string title, string reason)
    {
        var asked = title == "121" ? new string('a', 121) : title;

        Assert.Contains(reason, Evening().Refused(new BeginShow(asked)), StringComparison.Ordinal);
        Assert.Contains(reason, Evening().Refused(new ReopenShow(asked, new([.. Evening().Log]))), StringComparison.Ordinal);
    }

    [Theory]
    [InlineData(false, RecordingPhase.None)]
    [InlineData(true, RecordingPhase.Stopped)]
    public void A_show_that_was_ended_and_reopened_goes_on_with_its_next_puzzle(bool isRecorded, RecordingPhase phase)
    {
        var session = PlayedSession.Of(Puzzles.Easy);
        if (isRecorded)
            session.Do(new StartRecording());
        session.Place("r1c1", 4).Do(new EndShow());
        Event[] ended = [.. session.Log];
        var before = Companion.Session.Shows.StoredShow.Replay(ended).VideoLength;
        session.Do(new LoadPuzzle(Puzzles.Hard, "Next", "", ""));

        session.Do(new ReopenShow("Evening", new([.. ended])));
        var (isOver, show, entries) = (session.State.IsOver, session.State.Show, session.State.Entries);
        session.Do(new LoadPuzzle(Puzzles.Hard, "Its second", "", ""));

        Assert.False(isOver);
        Assert.Equal((show, "Evening", "Its second"), (session.State.Show, session.State.ShowTitle, session.State.Grid.Credit.Title));
        Assert.Equal((phase, entries + 1), (session.State.Recording.Phase, session.State.Entries));
        if (isRecorded)
            Assert.Equal(before, Companion.Session.Shows.StoredShow.Replay([.. session.Log.SkipWhile(happened => happened is not ShowBegun { Title: "Evening" })]).VideoLength);
    }

    // A show with something of everything that could stay behind.
    private static PlayedSession Evening()
    {
        var session = PlayedSession.Of(Puzzles.Easy);
        var open = session.Scan().Open[^1].Deduction;
        return session.Do(
            new PlaceFrame("close", new(0.1, 0.1, 0.5, 0.5)),
            new StopLadder(new("xy-wing")),
            new SwitchFamily("fish", IsOn: false),
            new LimitAsks(new(true, Grade.What, true)),
            new SetDelay(new(12, 3, 15)),
            new SetAudienceDoor(AudienceDoor.Open),
            new AllowCoHostOnAir(true),
            new FeatureRules(new([new(new("xy-wing"))])),
            new NoteStep(CandidateSet.Parse("r2c2=6"), CandidateSet.Empty, "Slowly"),
            new CueText("Say who set it."),
            new PlaceDigit(Cell.Parse("r1c1"), Digit.Of(4)),
            new StandBy(open),
            new NextGrade(),
            new StandBy(open),
            new ShowDelayCode("kite"));
    }
}
