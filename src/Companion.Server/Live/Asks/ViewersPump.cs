using Companion.Server.Access;
using Companion.Server.Live.Desk;
using Companion.Server.Live.Transport;
using Companion.Session.Views;
using Microsoft.AspNetCore.SignalR;

namespace Companion.Server.Live.Asks;

/// <summary>Pushes what comes of viewers' asks to the panels, a few times a second at most, however many ask.</summary>
internal sealed partial class ViewersPump : BackgroundService, IViewersOutput
{
    private readonly Pump<ViewersView> _pump;
    private readonly ILogger _log;

    /// <summary>Makes the pump.</summary>
    /// <param name="hub">The panels.</param>
    /// <param name="clock">The clock.</param>
    /// <param name="log">Where failures are reported.</param>
    public ViewersPump(IHubContext<DeskHub, IDeskClient> hub, TimeProvider clock, ILogger<ViewersPump> log)
    {
        _log = log;
        _pump = new(
            view => hub.Clients.Groups(nameof(AccessRole.Presenter), nameof(AccessRole.CoHost)).Viewers(view),
            new(Patience: TimeSpan.FromMilliseconds(100), Pause: TimeSpan.FromMilliseconds(250)),
            clock,
            PushFailed);
    }

    /// <inheritdoc/>
    public void Show(ViewersView view) => _pump.Give(view);

    /// <inheritdoc/>
    protected override Task ExecuteAsync(CancellationToken stoppingToken) => _pump.Run(stoppingToken);

    [LoggerMessage(LogLevel.Error, "A push failed; the session goes on.")]
    private partial void PushFailed(Exception failure);
}
