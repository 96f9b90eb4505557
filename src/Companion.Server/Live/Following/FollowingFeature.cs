namespace Companion.Server.Live.Following;

/// <summary>Following the presenter's screen.</summary>
internal static class FollowingFeature
{
    /// <summary>Adds what follows it.</summary>
    /// <param name="services">Where to.</param>
    public static IServiceCollection AddFollowing(this IServiceCollection services) =>
        services.AddSingleton<IScreenReader, ScreenReader>().AddSingleton<ScreenDesk>().AddSingleton<ScreenEndpoint>();
}
