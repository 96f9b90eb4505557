namespace Companion.Server.Live.Transport;

/// <summary>
/// Pushes the newest view to the pages of one hub. Each hub has a pump of its own, so that the pages of one never wait for another's.
/// </summary>
/// <typeparam name="T">What the pages are made views from.</typeparam>
internal abstract partial class ViewPump<T> : BackgroundService
    where T : class
{
    private readonly Pump<T> _pump;
    private readonly ILogger _log;

    /// <summary>Makes the pump.</summary>
    /// <param name="pace">Patience and pause.</param>
    /// <param name="clock">The clock.</param>
    /// <param name="log">Where failures are reported.</param>
    protected ViewPump(PumpPace pace, TimeProvider clock, ILogger log)
    {
        _log = log;
        _pump = new(Send, pace, clock, PushFailed);
    }

    /// <summary>Takes the newest. Never waits.</summary>
    /// <param name="newest">What to push.</param>
    public virtual void Show(T newest) => _pump.Give(newest);

    /// <summary>Sends to all pages of the hub.</summary>
    /// <param name="newest">The newest.</param>
    protected abstract Task Send(T newest);

    /// <inheritdoc/>
    protected override Task ExecuteAsync(CancellationToken stoppingToken) => _pump.Run(stoppingToken);

    /// <summary>Reports a failure.</summary>
    /// <param name="failure">The failure.</param>
    [LoggerMessage(LogLevel.Error, "A push failed; the session goes on.")]
    protected partial void PushFailed(Exception failure);
}
