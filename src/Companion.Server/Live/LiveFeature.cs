using Companion.Engine.Rules;
using Companion.Server.Access;
using Companion.Server.Live.Asks;
using Companion.Server.Live.Audience;
using Companion.Server.Live.Audience.Door;
using Companion.Server.Live.Desk;
using Companion.Server.Live.Following;
using Companion.Server.Live.Loop;
using Companion.Server.Live.Overlay;
using Companion.Server.Live.Replay;
using Companion.Server.Live.Transport;
using Companion.Server.Settings;
using Companion.Session.Commands;
using Companion.Session.Planning;
using Companion.Session.Proving;
using Companion.Session.Scanning;
using Companion.Session.Views;

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
        services.AddSingleton(new Prover(ladder)).AddSingleton(ShippedFiles.Rarity());
        services.AddSingleton<IWorker<ScanResult>, ScanWorker>().AddSingleton<IWorker<Outlook>, OutlookWorker>()
            .AddSingleton<IWorker<AttributeEntry>, ProofWorker>().AddSingleton<IWorker<PlannedWay>, PlanWorker>();
        services.AddSingleton(typeof(LateWork<>)).AddSingleton<LateWorks>();
        services.AddTransient<LateAnswers>().AddSingleton<CellQuestions>().AddSingleton<Vetter>().AddSingleton<ShowDesk>();
        services.AddSingleton<FanOut>().AddSingleton<ScenesShown>();
        services.AddHosted<SessionLoop>();
        services.AddOutput<OverlayPump>().AddOutput<DeskPump>();
        services.AddFollowing();
        services.AddAsks(ladder).AddOwnAudience().AddSingleton<AudienceLink>();
        services.AddHosted<DoorPump>().AddSingleton<IAudienceOutput>(provider => provider.GetRequiredService<DoorPump>());
        services.AddHubs()
            .AddHubOptions<DeskHub>(hub => hub.MaximumReceiveMessageSize = 16 * 1024) // a pasted grid with its credit, generously
            .AddHubOptions<ReplayHub>(hub => hub.MaximumReceiveMessageSize = 1024) // names and numbers
            .AddHubOptions<OverlayHub>(hub => hub.MaximumReceiveMessageSize = 1024); // handshake and pings
        return services;
    }

    /// <summary>Maps the hubs.</summary>
    /// <param name="app">The server.</param>
    public static void MapLive(this WebApplication app)
    {
        app.MapAudience();
        ImportEndpoint.Map(app);
        ScreenEndpoint.Map(app);

        // A key held down repeats some 30 times a second, at 60 bytes each.
        var writing = new TrafficLimit(BytesPerSecond: 16 * 1024, Burst: 64 * 1024);
        app.MapHub<DeskHub>(HubPaths.Presenter, writing, TimeSpan.FromSeconds(2)).RequireAuthorization(Policies.Presenter);
        app.MapHub<DeskHub>(HubPaths.Desk, writing, TimeSpan.FromSeconds(2)).RequireAuthorization(Policies.CoHost);
        // A page that plays fast asks for some ten moments a second.
        var asking = new TrafficLimit(BytesPerSecond: 4096, Burst: 16 * 1024);
        app.MapHub<ReplayHub>(HubPaths.Overlay + HubPaths.Replay, asking, TimeSpan.FromSeconds(2)).RequireAuthorization(Policies.Overlay);
        app.MapHub<ReplayHub>(HubPaths.Presenter + HubPaths.Replay, asking, TimeSpan.FromSeconds(2)).RequireAuthorization(Policies.Presenter);
        app.MapHub<OverlayHub>(HubPaths.Overlay, new(BytesPerSecond: 256, Burst: 4096), TimeSpan.FromSeconds(1))
            .RequireAuthorization(Policies.Overlay);
    }
}
