using Companion.Engine.Rules;
using Companion.Server.Access;
using Companion.Server.Live.Asks;
using Companion.Server.Live.Audience;
using Companion.Server.Live.Desk;
using Companion.Server.Live.Loop;
using Companion.Server.Live.Overlay;
using Companion.Server.Live.Transport;
using Companion.Server.Settings;
using Companion.Server.Wire;
using Companion.Session.Proving;
using Companion.Session.Views;
using Microsoft.AspNetCore.SignalR;

namespace Companion.Server.Live;

/// <summary>The session, and the hubs by which pages follow it.</summary>
internal static class LiveFeature
{
    /// <summary>Adds the session's loop, its scans, the hubs and their pumps.</summary>
    /// <param name="services">Where to.</param>
    /// <param name="ladder">The rules, with the names that they are called by.</param>
    public static IServiceCollection AddLive(this IServiceCollection services, Ladder ladder)
    {
        services.AddSingleton(ladder).AddSingleton(provider =>
            new Voice(ShippedFiles.Wording(ladder), provider.GetRequiredService<ServerSettings>().SpeakingRate));
        services.AddSingleton<IScanner>(new LadderScanner(ladder)).AddSingleton<LatestScan>();
        services.AddSingleton(new Prover(ladder)).AddSingleton<LateProofs>().AddSingleton<CellQuestions>();
        services.AddSingleton<FanOut>().AddSingleton<ScenesShown>();
        services.AddHosted<SessionLoop>();
        services.AddOutput<OverlayPump>().AddOutput<DeskPump>().AddOutput<AudiencePump>();
        services.AddAsks(ladder);
        services.AddSignalR(hub => hub.AddFilter<ReplacedKeyFilter>())
            .AddHubOptions<DeskHub>(hub => hub.MaximumReceiveMessageSize = 16 * 1024) // a pasted grid with its credit, generously
            .AddHubOptions<OverlayHub>(hub => hub.MaximumReceiveMessageSize = 1024) // handshake and pings
            .AddHubOptions<AudienceHub>(hub => hub.MaximumReceiveMessageSize = 1024)
            .AddJsonProtocol(protocol => WireJson.Shape(protocol.PayloadSerializerOptions))
            .AddMessagePackProtocol(protocol => protocol.SerializerOptions = WireMessagePack.Options);
        return services.AddSingleton<ReplacedKeyFilter>();
    }

    /// <summary>Maps the hubs.</summary>
    /// <param name="app">The server.</param>
    public static void MapLive(this WebApplication app)
    {
        // A key held down repeats some 30 times a second, at 60 bytes each.
        var writing = new TrafficLimit(BytesPerSecond: 16 * 1024, Burst: 64 * 1024);
        app.MapHub<DeskHub>(HubPaths.Presenter, Policies.Presenter, writing, TimeSpan.FromSeconds(2));
        app.MapHub<DeskHub>(HubPaths.Desk, Policies.CoHost, writing, TimeSpan.FromSeconds(2));
        app.MapHub<OverlayHub>(HubPaths.Overlay, Policies.Overlay, new(BytesPerSecond: 256, Burst: 4096), TimeSpan.FromSeconds(1));
        app.MapHub<AudienceHub>(HubPaths.Audience, Policies.Viewer, new(BytesPerSecond: 256, Burst: 4096), TimeSpan.FromSeconds(1));
    }

    private static void MapHub<THub>(
        this WebApplication app, string path, string policy, TrafficLimit limit, TimeSpan stalled)
        where THub : Hub
    {
        var clock = app.Services.GetRequiredService<TimeProvider>();
        app.MapConnections(
            path,
            new() { Transports = Microsoft.AspNetCore.Http.Connections.HttpTransportType.WebSockets, TransportSendTimeout = stalled },
            connections => connections
                .Use(next => connection => limit.Apply(connection, next, clock))
                .UseHub<THub>())
            .RequireAuthorization(policy);
    }
}
