using Companion.Server.Live.Loop;
using Companion.Server.Live.Transport;
using Companion.Server.Wire;
using Companion.Session.State;
using Companion.Session.Views;
using Microsoft.AspNetCore.SignalR;

namespace Companion.Server.Live.Overlay;

/// <summary>Pushes what is on air to the overlay of each scene and to the stage.</summary>
internal sealed class OverlayPump(
    IHubContext<OverlayHub, IOverlayClient> hub, ScenesShown scenes, Voice voice, TimeProvider clock, ILogger<OverlayPump> log)
    : ViewPump<Snapshot>(new(Patience: TimeSpan.FromMilliseconds(100)), clock, log), IOutput
{
    private SessionState? _shown;

    /// <inheritdoc/>
    protected override Task Send(Snapshot snapshot)
    {
        // A finished scan changes nothing here.
        if (snapshot.State == (object?)_shown)
            return Task.CompletedTask;
        _shown = snapshot.State;
        return Task.WhenAll(scenes.Names
            .Select(scene => hub.Clients.Group(OverlayHub.Scene(scene)).Overlay(OverlayWire.Of(snapshot.State, scene, voice)))
            .Append(hub.Clients.Group(OverlayHub.Stage).Stage(StageWire.Of(snapshot.State, voice))));
    }
}
