using Companion.Server.Live.Transport;
using Companion.Server.Settings;
using Companion.Session.Audience;
using Microsoft.AspNetCore.SignalR;

namespace Companion.Server.Live.Audience;

/// <summary>Pushes to the viewers, who may be many: only the newest view, only so often, and to some of them at a time.</summary>
internal sealed class AudiencePump(
    IHubContext<AudienceHub, IAudienceClient> hub,
    Slices slices,
    ServerSettings settings,
    TimeProvider clock,
    ILogger<AudiencePump> log)
    : ViewPump<AudienceView>(new(Patience, TimeSpan.FromSeconds(1) / settings.AudiencePushesPerSecond), clock, log), IAudienceOutput
{
    // Sends do not wait for viewers (see AudienceFeature.MapAudience): this is time for all slices on a machine that is busy.
    private static readonly TimeSpan Patience = TimeSpan.FromSeconds(1);

    private static readonly TimeSpan BetweenSlices = TimeSpan.FromMilliseconds(1);

    private readonly TimeProvider _clock = clock;

    /// <inheritdoc/>
    protected override async Task Send(AudienceView view)
    {
        List<Task> sends = [];
        foreach (var slice in slices.Names)
        {
            sends.Add(hub.Clients.Group(slice).Board(view));
            await Task.Delay(BetweenSlices, _clock);
        }

        await Task.WhenAll(sends);
    }
}
