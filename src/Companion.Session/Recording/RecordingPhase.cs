namespace Companion.Session.Recording;

/// <summary>What a recording is doing.</summary>
public enum RecordingPhase
{
    /// <summary>There is none.</summary>
    None,

    /// <summary>It runs.</summary>
    Running,

    /// <summary>It pauses and can go on.</summary>
    Paused,

    /// <summary>It is over.</summary>
    Stopped,
}
