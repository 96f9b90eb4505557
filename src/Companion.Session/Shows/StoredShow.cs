using System.Collections.Immutable;
using Companion.Session.Events;
using Companion.Session.Recording;
using Companion.Session.State;

namespace Companion.Session.Shows;

/// <summary>A show that was kept, with each of its moments. Its states are the ones that it had live. Immutable.</summary>
public sealed class StoredShow
{
    private StoredShow(string title, TimeSpan offset, ImmutableArray<Event> events, ImmutableArray<Moment> moments, RecordingClock recording) =>
        (Title, Offset, Events, Moments, Recording) = (title, offset, events, moments, recording);

    /// <summary>What it is called; the title of its first puzzle where the presenter gave none, and empty where that has none.</summary>
    public string Title { get; }

    /// <summary>How much later in the recording everything is than the presenter keyed it; it can be corrected at any time.</summary>
    public TimeSpan Offset { get; }

    /// <summary>Its events in order, at least one.</summary>
    public ImmutableArray<Event> Events { get; }

    /// <summary>Its moments in order, one for each event.</summary>
    public ImmutableArray<Moment> Moments { get; }

    /// <summary>The clock of its recording.</summary>
    public RecordingClock Recording { get; }

    /// <summary>When it began.</summary>
    public DateTimeOffset Began => Events[0].At;

    /// <summary>How long it took from the first event to the last.</summary>
    public TimeSpan Length => Moments[^1].Elapsed;

    /// <summary>How much was recorded, as keyed; where nothing was, how long the show took.</summary>
    public TimeSpan KeyedLength => Recording.Phase == RecordingPhase.None ? Length : Recording.RecordedUntil(Moments.Max(moment => moment.Happened.At));

    /// <summary>How long the video is, as far as is known: what was keyed, with the offset.</summary>
    public TimeSpan VideoLength => KeyedLength + Offset is var length && length > TimeSpan.Zero ? length : TimeSpan.Zero;

    /// <summary>The state that it led to.</summary>
    public SessionState Last => Moments[^1].State;

    /// <summary>Replays a show.</summary>
    /// <param name="events">Its events in order, at least one.</param>
    /// <param name="before">How many events the log held before it, by which its states are numbered; 0 for a show of a file.</param>
    /// <param name="title">What it is called; null for what its events say.</param>
    /// <param name="offset">See <see cref="Offset"/>.</param>
    /// <exception cref="ArgumentException">There are no events, or they lead to no states.</exception>
    public static StoredShow Replay(IEnumerable<Event> events, long before = 0, string? title = null, TimeSpan offset = default)
    {
        ImmutableArray<Event> all = [.. events];
        if (all.IsEmpty)
            throw new ArgumentException("A show has an event at least.", nameof(events));
        var recording = all.Aggregate(RecordingClock.None, (clock, happened) => clock.After(happened));
        var (state, elapsed) = (SessionState.Initial with { Sequence = before }, TimeSpan.Zero);
        var moments = ImmutableArray.CreateBuilder<Moment>(all.Length);
        foreach (var happened in all)
        {
            state = Evolver.Evolve(state, happened);
            elapsed = happened.At - all[0].At is var since && since > elapsed ? since : elapsed;
            moments.Add(new(moments.Count + 1, happened, state, elapsed, recording.TimeOf(happened.At, offset)));
        }

        return new(title ?? TitleOf(all), offset, all, moments.MoveToImmutable(), recording);
    }

    /// <summary>
    /// Where in the recording a moment is, as keyed and without the offset: what came in a pause is where it goes on, what came before is at
    /// its beginning. Where nothing was recorded, the time since the show began.
    /// </summary>
    /// <param name="moment">A moment of this show.</param>
    public TimeSpan KeyedTimeOf(Moment moment)
    {
        ArgumentNullException.ThrowIfNull(moment);
        return Recording.Phase == RecordingPhase.None ? moment.Elapsed : Recording.RecordedUntil(moment.Happened.At);
    }

    /// <summary>The moment at a time: the last one that had come by then; the first one before that.</summary>
    /// <param name="elapsed">The time since the show began.</param>
    public Moment At(TimeSpan elapsed) => LastBy(moment => moment.Elapsed <= elapsed);

    /// <summary>What the show was at a time of its recording; null where nothing was recorded.</summary>
    /// <param name="recorded">The time in the recording.</param>
    public Moment? AtRecorded(TimeSpan recorded) =>
        Recording.Phase == RecordingPhase.None ? null : LastBy(moment => Recording.RecordedUntil(moment.Happened.At) + Offset <= recorded);

    private static string TitleOf(ImmutableArray<Event> events) =>
        (events[0] as ShowBegun)?.Title is { Length: > 0 } title
            ? title
            : events.OfType<PuzzleLoaded>().FirstOrDefault()?.Title ?? "";

    // Neither kind of time goes back from one moment to the next, but for clocks that were set back.
    private Moment LastBy(Predicate<Moment> hasCome)
    {
        var (low, high) = (0, Moments.Length - 1);
        while (low < high)
        {
            var middle = (low + high + 1) / 2;
            (low, high) = hasCome(Moments[middle]) ? (middle, high) : (low, middle - 1);
        }

        return Moments[low];
    }
}
