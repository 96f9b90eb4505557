using Companion.Session.Events;
using Companion.Session.State;

namespace Companion.Session.Recording;

/// <summary>Decides on the clock of the recording.</summary>
internal static class RecordingRequests
{
    public static Decision Start(SessionState state, DateTimeOffset now) => state.Recording.Phase switch
    {
        RecordingPhase.Running => Decision.Refuse("The recording is running already: stop it before another one starts."),
        RecordingPhase.Paused => Decision.Refuse("The recording pauses: let it go on, or stop it before another one starts."),
        _ => Decision.Of(new RecordingStarted(now)),
    };

    public static Decision Pause(SessionState state, DateTimeOffset now) => state.Recording.Phase switch
    {
        RecordingPhase.Running => Decision.Of(new RecordingPaused(now)),
        RecordingPhase.Paused => Decision.Nothing,
        _ => Decision.Refuse("No recording is running: start one."),
    };

    public static Decision Resume(SessionState state, DateTimeOffset now) => state.Recording.Phase switch
    {
        RecordingPhase.Paused => Decision.Of(new RecordingResumed(now)),
        RecordingPhase.Running => Decision.Nothing,
        _ => Decision.Refuse("No recording pauses: start one."),
    };

    public static Decision Stop(SessionState state, DateTimeOffset now) => state.Recording.Phase switch
    {
        RecordingPhase.Running or RecordingPhase.Paused => Decision.Of(new RecordingStopped(now)),
        _ => Decision.Refuse("No recording is running: start one."),
    };
}
