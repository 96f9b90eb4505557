using Companion.Session.Events;
using Companion.Session.State;

namespace Companion.Session.Recording;

/// <summary>
/// The clock of a show's recording, as the presenter keys it. It turns the time of an event into the time in the recording. Starting
/// once more begins another recording: the clock is that of the last one. Immutable, compared by value.
/// </summary>
/// <param name="Runs">What was recorded, in order, with a pause between each and the next.</param>
/// <param name="IsStopped">Whether it is over.</param>
public sealed record RecordingClock(ValueArray<RecordedRun> Runs, bool IsStopped)
{
    /// <summary>No recording.</summary>
    public static RecordingClock None { get; } = new(default, IsStopped: false);

    /// <summary>What it is doing.</summary>
    public RecordingPhase Phase => (Runs.Count, IsStopped) switch
    {
        (0, _) => RecordingPhase.None,
        (_, true) => RecordingPhase.Stopped,
        _ => Runs[^1].To is null ? RecordingPhase.Running : RecordingPhase.Paused,
    };

    /// <summary>The time in the recording; null where this moment was not recorded.</summary>
    /// <param name="at">The moment, by the session's clock.</param>
    /// <param name="offset">
    /// How much later in the recording everything is than it was keyed: above zero where the recording had started before the key.
    /// </param>
    public TimeSpan? TimeOf(DateTimeOffset at, TimeSpan offset = default) =>
        Runs.Any(run => run.Holds(at)) && RecordedUntil(at) + offset is var time && time >= TimeSpan.Zero ? time : null;

    /// <summary>How much had been recorded at a moment: what came in a pause is where the recording goes on.</summary>
    /// <param name="at">The moment.</param>
    public TimeSpan RecordedUntil(DateTimeOffset at) =>
        Runs.Aggregate(TimeSpan.Zero, (sum, run) => sum + run.Until(at));

    /// <summary>The clock after an event; the same where the event is none of the recording's.</summary>
    /// <param name="happened">The event.</param>
    public RecordingClock After(Event happened) => happened switch
    {
        RecordingStarted => new(new([new(happened.At, null)]), IsStopped: false),
        RecordingPaused => End(happened.At),
        RecordingResumed when Phase == RecordingPhase.Paused => this with { Runs = Runs.Add(new(happened.At, null)) },
        // What is recorded after a show is none of it.
        RecordingStopped or ShowEnded when Runs.Count > 0 => End(happened.At) with { IsStopped = true },
        _ => this,
    };

    private RecordingClock End(DateTimeOffset at) => Phase == RecordingPhase.Running
        ? this with { Runs = new([.. Runs.Take(Runs.Count - 1), Runs[^1] with { To = at }]) }
        : this;
}
