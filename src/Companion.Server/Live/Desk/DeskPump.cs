using Companion.Server.Access;
using Companion.Server.Live.Loop;
using Companion.Server.Live.Transport;
using Companion.Server.Wire;
using Companion.Session.Scanning;
using Companion.Session.Views;
using Microsoft.AspNetCore.SignalR;

namespace Companion.Server.Live.Desk;

/// <summary>Pushes the session to the presenter's and the co-hosts' panels.</summary>
internal sealed class DeskPump(IHubContext<DeskHub, IDeskClient> hub, Voice voice, TimeProvider clock, ILogger<DeskPump> log)
    : HubPump(new(Patience: TimeSpan.FromMilliseconds(100)), clock, log)
{
    private ScanResult? _shown;

    /// <inheritdoc/>
    protected override Task Send(Snapshot snapshot)
    {
        var presenters = hub.Clients.Group(nameof(AccessRole.Presenter));
        var coHosts = hub.Clients.Group(nameof(AccessRole.CoHost));
        var desk = DeskWire.Of(snapshot, AccessRole.Presenter, voice);
        List<Task> sends = [presenters.Desk(desk), coHosts.Desk(desk with { Role = AccessRole.CoHost })];
        if (snapshot.Scan is { } scan && scan != _shown)
        {
            var next = PanelViews.Next(scan, voice);
            sends.AddRange([presenters.Next(next), coHosts.Next(next)]);
            _shown = scan;
        }

        return Task.WhenAll(sends);
    }
}
