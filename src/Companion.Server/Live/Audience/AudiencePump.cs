using Companion.Server.Live.Loop;
using Companion.Server.Live.Transport;
using Companion.Server.Settings;
using Companion.Session.State;
using Companion.Session.Views;
using Microsoft.AspNetCore.SignalR;

namespace Companion.Server.Live.Audience;

/// <summary>Pushes to the viewers, who may be many: only what is new to them, and only so often.</summary>
internal sealed class AudiencePump(
    IHubContext<AudienceHub, IAudienceClient> hub, ServerSettings settings, TimeProvider clock, ILogger<AudiencePump> log)
    : HubPump(new(TimeSpan.FromMilliseconds(100), TimeSpan.FromSeconds(1) / settings.AudiencePushesPerSecond), clock, log)
{
    private Credit? _shown;

    /// <inheritdoc/>
    protected override Task Send(Snapshot snapshot)
    {
        var view = PublicViews.Viewer(snapshot.State);
        if (view.Credit == _shown)
            return Task.CompletedTask;
        _shown = view.Credit;
        return hub.Clients.All.Viewer(view);
    }
}
