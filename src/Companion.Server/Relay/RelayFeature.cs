using Companion.Server.Access;
using Companion.Server.Data;
using Companion.Server.Live;
using Companion.Server.Live.Audience;
using Companion.Server.Relay.Following;
using Companion.Server.Relay.Publishing;
using Companion.Server.Settings;
using Microsoft.AspNetCore.SignalR;
using Microsoft.AspNetCore.SignalR.StackExchangeRedis;

namespace Companion.Server.Relay;

/// <summary>
/// Audience servers follow the presenter's by way of Redis. Only the audience's hub has a part in it: what panels and overlays are told
/// never leaves the presenter's server.
/// </summary>
internal static class RelayFeature
{
    /// <summary>Has the presenter's server publish, where the settings name a Redis server.</summary>
    /// <param name="services">Where to.</param>
    /// <param name="folder">Where the password may lie.</param>
    /// <param name="settings">The settings.</param>
    /// <exception cref="PlainException">The password cannot be used.</exception>
    public static IServiceCollection AddPublishing(this IServiceCollection services, DataFolder folder, ServerSettings settings) =>
        !settings.Relay.IsOn
            ? services
            : services.AddLink(folder, settings)
                .AddSingleton<RedisHubLifetimeManager<AudienceHub>>()
                .AddHosted<BoardPublisher>().AddSingleton<IAudienceOutput>(provider => provider.GetRequiredService<BoardPublisher>())
                .AddHosted<AskTaker>();

    /// <summary>Has an audience server follow the presenter's.</summary>
    /// <param name="services">Where to.</param>
    /// <param name="folder">Where the password may lie.</param>
    /// <param name="settings">The settings, which name a Redis server.</param>
    /// <exception cref="PlainException">The password cannot be used.</exception>
    public static IServiceCollection AddFollowing(this IServiceCollection services, DataFolder folder, ServerSettings settings) =>
        services.AddLink(folder, settings)
            .AddSingleton<HubLifetimeManager<AudienceHub>, RedisHubLifetimeManager<AudienceHub>>()
            .AddHosted<FollowedBoards>().AddSingleton<IAudienceBoards>(provider => provider.GetRequiredService<FollowedBoards>())
            .AddHosted<ForwardedAsks>().AddSingleton<IAudienceAsks>(provider => provider.GetRequiredService<ForwardedAsks>())
            .AddSingleton<IKeys, FollowedKeys>();

    private static IServiceCollection AddLink(this IServiceCollection services, DataFolder folder, ServerSettings settings)
    {
        var password = RedisLink.Password(folder, settings.Relay);
        services.AddHosted(provider => new RedisLink(
            settings.Relay, password, provider.GetRequiredService<TimeProvider>(), provider.GetRequiredService<ILogger<RedisLink>>()));
        services.AddOptions<RedisOptions>().Configure<RedisLink>((redis, link) => redis.ConnectionFactory = async _ => await link.Connected);
        return services;
    }
}
