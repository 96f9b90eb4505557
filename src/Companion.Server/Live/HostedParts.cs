using Companion.Server.Live.Loop;

namespace Companion.Server.Live;

/// <summary>Adds parts that run beside the server and are one each.</summary>
internal static class HostedParts
{
    /// <summary>Adds a part that runs.</summary>
    /// <param name="services">Where to.</param>
    public static IServiceCollection AddHosted<T>(this IServiceCollection services)
        where T : class, IHostedService => services.AddSingleton<T>().AddHostedService(provider => provider.GetRequiredService<T>());

    /// <summary>Adds a part that runs.</summary>
    /// <param name="services">Where to.</param>
    /// <param name="make">Makes it.</param>
    public static IServiceCollection AddHosted<T>(this IServiceCollection services, Func<IServiceProvider, T> make)
        where T : class, IHostedService => services.AddSingleton(make).AddHostedService(provider => provider.GetRequiredService<T>());

    /// <summary>Adds a part that runs and is shown the session.</summary>
    /// <param name="services">Where to.</param>
    public static IServiceCollection AddOutput<T>(this IServiceCollection services)
        where T : class, IHostedService, IOutput => services.AddHosted<T>().AddSingleton<IOutput>(provider => provider.GetRequiredService<T>());
}
