using Companion.Server.Live.Transport;
using Companion.Server.Settings;
using Companion.Session.Audience;
using Microsoft.AspNetCore.SignalR;

namespace Companion.Server.Live.Audience;

/// <summary>Pushes to the viewers, who may be many: only the newest view, and only so often.</summary>
internal sealed class AudiencePump(
    IHubContext<AudienceHub, IAudienceClient> hub, ServerSettings settings, TimeProvider clock, ILogger<AudiencePump> log)
    : ViewPump<AudienceView>(
        new(TimeSpan.FromMilliseconds(100), TimeSpan.FromSeconds(1) / settings.AudiencePushesPerSecond), clock, log), IAudienceOutput
{
    /// <inheritdoc/>
    protected override Task Send(AudienceView view) => hub.Clients.All.Board(view);
}
