using Companion.Session.Recording;
using Companion.Session.Shows;

namespace Companion.Session.AfterShow;

/// <summary>When a moment of a show is seen in its video: the time in the recording or, where nothing was recorded, since the show began.</summary>
public static class VideoTime
{
    /// <summary>The time of a moment; null where the recording ran and did not have it.</summary>
    /// <param name="show">The show.</param>
    /// <param name="moment">One of its moments.</param>
    public static TimeSpan? Of(StoredShow show, Moment moment)
    {
        ArgumentNullException.ThrowIfNull(show);
        ArgumentNullException.ThrowIfNull(moment);
        return show.Recording.Phase == RecordingPhase.None ? moment.Elapsed : moment.Recorded;
    }

    /// <summary>The same with a time for every moment: what was not recorded is where the recording goes on.</summary>
    /// <param name="show">The show.</param>
    /// <param name="moment">One of its moments.</param>
    public static TimeSpan Near(StoredShow show, Moment moment)
    {
        ArgumentNullException.ThrowIfNull(show);
        return show.KeyedTimeOf(moment) + show.Offset is var time && time > TimeSpan.Zero ? time : TimeSpan.Zero;
    }

    /// <summary>The moment that is seen at a time of the video: the last one that had come by then.</summary>
    /// <param name="show">The show.</param>
    /// <param name="at">The time.</param>
    public static Moment MomentAt(StoredShow show, TimeSpan at)
    {
        ArgumentNullException.ThrowIfNull(show);
        return show.AtRecorded(at) ?? show.At(at);
    }
}
