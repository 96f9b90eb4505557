using Companion.Server.Live.Loop;

namespace Companion.Server.Live.Transport;

/// <summary>
/// Pushes the session to the pages of one hub. Each hub has a pump of its own, so that the pages of one never wait for another's.
/// </summary>
internal abstract partial class HubPump : BackgroundService, IOutput
{
    private readonly Pump<Snapshot> _pump;
    private readonly ILogger _log;

    /// <summary>Makes the pump.</summary>
    /// <param name="pace">Patience and pause.</param>
    /// <param name="clock">The clock.</param>
    /// <param name="log">Where failures are reported.</param>
    protected HubPump(PumpPace pace, TimeProvider clock, ILogger log)
    {
        _log = log;
        _pump = new(Send, pace, clock, PushFailed);
    }

    /// <inheritdoc/>
    public void Show(Snapshot snapshot) => _pump.Give(snapshot);

    /// <summary>Sends a snapshot to all pages of the hub.</summary>
    /// <param name="snapshot">The session now.</param>
    protected abstract Task Send(Snapshot snapshot);

    /// <inheritdoc/>
    protected override Task ExecuteAsync(CancellationToken stoppingToken) => _pump.Run(stoppingToken);

    [LoggerMessage(LogLevel.Error, "A push failed; the session goes on.")]
    private partial void PushFailed(Exception failure);
}
