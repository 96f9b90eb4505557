using Companion.Session.Recording;

namespace Companion.Server.Wire;

/// <summary>How the recording is doing.</summary>
/// <param name="Phase">What it does.</param>
/// <param name="Seconds">How many seconds were recorded before it last went on.</param>
/// <param name="Since">When it last went on; null where it does not run.</param>
public sealed record RecordingWire(RecordingPhase Phase, double Seconds, DateTimeOffset? Since)
{
    internal static RecordingWire Of(RecordingClock clock)
    {
        var since = clock.Phase == RecordingPhase.Running ? clock.Runs[^1].From : (DateTimeOffset?)null;
        return new(clock.Phase, clock.RecordedUntil(since ?? DateTimeOffset.MaxValue).TotalSeconds, since);
    }
}
