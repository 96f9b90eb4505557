using Companion.Session.Commands;
using Companion.Session.Events;
using Companion.Session.Recording;

namespace Companion.Session.Tests.Shows;

public sealed class RecordingClockTests
{
    private static readonly DateTimeOffset Eight = new(2026, 1, 1, 20, 0, 0, TimeSpan.Zero);

    // Recorded from 10 to 20 and from 50 to 80, stopped at 80.
    private static readonly RecordingClock Clock = new Event[]
    {
        new RecordingStarted(After(10)), new RecordingPaused(After(20)), new RecordingResumed(After(50)), new RecordingStopped(After(80)),
    }.Aggregate(RecordingClock.None, (clock, happened) => clock.After(happened));

    [Theory]
    [InlineData(0, null)]
    [InlineData(9.999, null)]
    [InlineData(10, 0.0)]
    [InlineData(15.5, 5.5)]
    [InlineData(20, 10.0)]
    [InlineData(30, null)]
    [InlineData(50, 10.0)]
    [InlineData(60, 20.0)]
    [InlineData(80, 40.0)]
    [InlineData(81, null)]
    public void A_moment_has_a_time_in_the_recording_or_was_not_recorded(double at, double? expected) =>
        Assert.Equal(expected, Clock.TimeOf(After(at))?.TotalSeconds);

    [Theory]
    [InlineData(10, 2.5, 2.5)]
    [InlineData(10, -2.5, null)]
    [InlineData(15, -2.5, 2.5)]
    [InlineData(60, -20, 0.0)]
    public void A_corrected_offset_moves_every_time(double at, double offset, double? expected) =>
        Assert.Equal(expected, Clock.TimeOf(After(at), TimeSpan.FromSeconds(offset))?.TotalSeconds);

    [Theory]
    [InlineData(0, 0)]
    [InlineData(20, 10)]
    [InlineData(49, 10)]
    [InlineData(100, 40)]
    public void What_came_in_a_pause_is_where_the_recording_goes_on(double at, double expected) =>
        Assert.Equal(expected, Clock.RecordedUntil(After(at)).TotalSeconds);

    [Fact]
    public void A_recording_that_nobody_stopped_goes_on()
    {
        var clock = RecordingClock.None.After(new RecordingStarted(After(10)));

        Assert.Equal((RecordingPhase.Running, 90), (clock.Phase, clock.TimeOf(After(100))?.TotalSeconds));
    }

    [Fact]
    public void A_clock_that_is_set_back_never_makes_a_recording_shorter_than_nothing()
    {
        var clock = RecordingClock.None.After(new RecordingStarted(After(10))).After(new RecordingPaused(After(-3600)))
            .After(new RecordingResumed(After(-3590)));

        Assert.Equal(20, clock.RecordedUntil(After(-3570)).TotalSeconds);
    }

    [Fact]
    public void Starting_once_more_begins_another_recording() =>
        Assert.Equal(5, Clock.After(new RecordingStarted(After(100))).TimeOf(After(105))?.TotalSeconds);

    [Fact]
    public void The_key_starts_pauses_goes_on_and_stops()
    {
        var session = PlayedSession.Of(Puzzles.Easy);

        Assert.Contains("start one", session.Refused(new PauseRecording()), StringComparison.Ordinal);
        Assert.Contains("start one", session.Refused(new ResumeRecording()), StringComparison.Ordinal);
        Assert.Contains("start one", session.Refused(new StopRecording()), StringComparison.Ordinal);
        session.Do(new StartRecording());
        Assert.Contains("running already", session.Refused(new StartRecording()), StringComparison.Ordinal);
        session.Do(new PauseRecording());
        Assert.Empty(session.Try(new PauseRecording()).Events);
        Assert.Contains("pauses", session.Refused(new StartRecording()), StringComparison.Ordinal);
        session.Do(new ResumeRecording(), new StopRecording());
        Assert.Contains("start one", session.Refused(new PauseRecording()), StringComparison.Ordinal);
        Assert.Equal(2, session.State.Recording.Runs.Count);
        session.Do(new StartRecording());
        Assert.Single(session.State.Recording.Runs);
    }

    private static DateTimeOffset After(double seconds) => Eight.AddSeconds(seconds);
}
