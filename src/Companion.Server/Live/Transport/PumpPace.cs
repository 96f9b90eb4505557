namespace Companion.Server.Live.Transport;

/// <summary>How a pump paces itself.</summary>
/// <param name="Patience">How long the next send waits for one that is stalled.</param>
/// <param name="Pause">The least time from the beginning of one send to the next; zero for none.</param>
internal readonly record struct PumpPace(TimeSpan Patience, TimeSpan Pause = default);
