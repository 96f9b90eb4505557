using Companion.Server.Access;
using Companion.Server.Live.Audience.Door;
using Companion.Server.Live.Transport;

namespace Companion.Server.Live.Audience;

/// <summary>The page for viewers.</summary>
internal static class AudienceFeature
{
    /// <summary>
    /// Adds the audience's hub, besides <see cref="Hubs.AddHubs"/>. Where its views come from, how they reach the viewers and who answers
    /// is for the caller to add: <see cref="IAudienceBoards"/>, a pump and <see cref="IAudienceAsks"/>.
    /// </summary>
    /// <param name="services">Where to.</param>
    public static IServiceCollection AddAudience(this IServiceCollection services)
    {
        // The longest ask has some 60 bytes.
        services.AddSignalR().AddHubOptions<AudienceHub>(hub => hub.MaximumReceiveMessageSize = 512);
        return services.AddSingleton<Crowd>().AddSingleton<Slices>()
            .AddSingleton<Guests>().AddSingleton<IAudienceOutput>(provider => provider.GetRequiredService<Guests>());
    }

    /// <summary>Adds the audience of this program's session.</summary>
    /// <param name="services">Where to.</param>
    public static IServiceCollection AddOwnAudience(this IServiceCollection services) => services.AddAudience()
        .AddHosted<AudiencePump>().AddSingleton<IAudienceOutput>(provider => provider.GetRequiredService<AudiencePump>())
        .AddOutput<DelayedBoards>().AddSingleton<IAudienceBoards>(provider => provider.GetRequiredService<DelayedBoards>())
        .AddSingleton<IAudienceAsks, DeskAsks>();

    /// <summary>Puts the entrance before the hub. Who asks has been recognised by then.</summary>
    /// <param name="app">The server.</param>
    public static void UseAudience(this WebApplication app) => app.UseMiddleware<AudienceEntrance>();

    /// <summary>Maps the hub.</summary>
    /// <param name="app">The server.</param>
    public static void MapAudience(this WebApplication app) =>
        app.MapHub<AudienceHub>(HubPaths.Audience, new(BytesPerSecond: 256, Burst: 4096), stalled: TimeSpan.FromSeconds(1), waitsForNobody: true);
}
