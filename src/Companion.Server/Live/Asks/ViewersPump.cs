using Companion.Server.Access;
using Companion.Server.Live.Desk;
using Companion.Server.Live.Transport;
using Companion.Session.Views;
using Microsoft.AspNetCore.SignalR;

namespace Companion.Server.Live.Asks;

/// <summary>Pushes what comes of viewers' asks to the panels, a few times a second at most, however many ask.</summary>
internal sealed class ViewersPump(IHubContext<DeskHub, IDeskClient> hub, TimeProvider clock, ILogger<ViewersPump> log)
    : ViewPump<ViewersView>(
        new(Patience: TimeSpan.FromMilliseconds(100), Pause: TimeSpan.FromMilliseconds(250)), clock, log), IViewersOutput
{
    /// <inheritdoc/>
    protected override Task Send(ViewersView view) =>
        hub.Clients.Groups(nameof(AccessRole.Presenter), nameof(AccessRole.CoHost)).Viewers(view);
}
