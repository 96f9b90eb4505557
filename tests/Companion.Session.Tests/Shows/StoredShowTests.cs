using Companion.Session.Commands;
using Companion.Session.Events;
using Companion.Session.Events.Storage;
using Companion.Session.Shows;
using Companion.Session.Shows.Files;
using Companion.Session.State;

namespace Companion.Session.Tests.Shows;

public sealed class StoredShowTests
{
    [Theory]
    [MemberData(nameof(ReplayTests.Seeds), MemberType = typeof(ReplayTests))]
    public void Every_show_of_a_session_replays_on_its_own_with_the_states_that_it_had_live(int seed)
    {
        var live = new List<SessionState>();
        var session = RandomSession.Of(seed, commands: 150);
        foreach (var happened in session.Log)
            live.Add(Evolver.Evolve(live.Count == 0 ? SessionState.Initial : live[^1], happened));

        foreach (var (before, events) in ShowsOf(session.Log))
        {
            var stored = events.Select(EventText.Write).ToList();
            var show = StoredShow.Replay(stored.Select(EventText.Read), before);

            Assert.Equal(live.Skip(before).Take(events.Length), show.Moments.Select(moment => moment.State));
            Assert.Equal(ShowHash.Of(stored), ShowHash.Of(show.Events.Select(EventText.Write)));
            Assert.Equal(events.Select(happened => show.Recording.TimeOf(happened.At)), show.Moments.Select(moment => moment.Recorded));
        }
    }

    [Theory]
    [MemberData(nameof(ReplayTests.Seeds), MemberType = typeof(ReplayTests))]
    public void A_moment_is_found_by_its_time_and_by_its_time_in_the_recording(int seed)
    {
        var session = PlayedSession.Of(Puzzles.Easy).Do(new StartRecording());
        var play = new RandomSession(seed, session);
        for (var count = 0; count < 40; count++)
            session.Try(play.Any());
        var show = StoredShow.Replay(ShowsOf(session.Log)[0].Events, offset: TimeSpan.FromSeconds(seed - 15));

        foreach (var moment in show.Moments)
        {
            Assert.Equal(moment.Elapsed, show.At(moment.Elapsed).Elapsed);
            Assert.True(show.At(moment.Elapsed).Number >= moment.Number);
            Assert.True(show.At(moment.Elapsed - TimeSpan.FromTicks(1)).Number <= Math.Max(1, moment.Number - 1) || moment.Elapsed == TimeSpan.Zero);
            if (moment.Recorded is { } recorded)
                Assert.True(show.AtRecorded(recorded)!.Number >= moment.Number);
        }

        Assert.Equal(show.Moments.Length, show.At(TimeSpan.MaxValue).Number);
        Assert.Equal(1, show.At(TimeSpan.MinValue).Number);
    }

    [Fact]
    public void Where_nothing_was_recorded_no_moment_has_a_time_in_the_recording()
    {
        var show = StoredShow.Replay(PlayedSession.Of(Puzzles.Easy).Place("r1c1", 4).Log);

        Assert.All(show.Moments, moment => Assert.Null(moment.Recorded));
        Assert.Null(show.AtRecorded(TimeSpan.Zero));
    }

    [Fact]
    public void A_show_is_called_what_the_presenter_calls_it_and_else_what_its_first_puzzle_is_called()
    {
        var session = PlayedSession.Of(Puzzles.Easy);
        Assert.Equal("Title", StoredShow.Replay(session.Log).Title);

        session.Do(new BeginShow("Second evening"), new LoadPuzzle(Puzzles.Easy, "Lanterns", "", ""));
        var second = ShowsOf(session.Log)[1].Events;
        Assert.Equal("Second evening", StoredShow.Replay(second).Title);
        Assert.Equal("Renamed", StoredShow.Replay(second, title: "Renamed").Title);
    }

    [Fact]
    public void A_clock_that_was_set_back_lets_no_time_go_back()
    {
        var at = PlayedSession.Start;
        var show = StoredShow.Replay([new MarksSettled(at), new MarksSettled(at.AddSeconds(9)), new MarksSettled(at.AddHours(-1)), new MarksSettled(at.AddSeconds(12))]);

        Assert.Equal([0, 9, 9, 12], show.Moments.Select(moment => moment.Elapsed.TotalSeconds));
    }

    [Fact]
    public void No_events_are_no_show() => Assert.Throws<ArgumentException>(() => StoredShow.Replay([]));

    /// <summary>A log cut into its shows, each with the number of the events before it.</summary>
    internal static List<(int Before, Event[] Events)> ShowsOf(IReadOnlyList<Event> log)
    {
        List<int> begins = [0, .. Enumerable.Range(1, log.Count - 1).Where(index => log[index] is ShowBegun), log.Count];
        return [.. begins.Zip(begins.Skip(1), (from, to) => (from, log.Skip(from).Take(to - from).ToArray()))];
    }
}
