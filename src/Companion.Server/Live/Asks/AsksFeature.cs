using Companion.Engine.Rules;
using Companion.Server.Chat;
using Companion.Server.Settings;
using Companion.Session.Asks;
using Companion.Session.Views;

namespace Companion.Server.Live.Asks;

/// <summary>What viewers may ask, and who answers.</summary>
internal static class AsksFeature
{
    /// <summary>Adds the desk where asks come in.</summary>
    /// <param name="services">Where to.</param>
    /// <param name="ladder">The rules that hints come from.</param>
    public static IServiceCollection AddAsks(this IServiceCollection services, Ladder ladder)
    {
        services.AddSingleton(provider => new Enquiries(
            provider.GetRequiredService<ServerSettings>().Asks, provider.GetRequiredService<Voice>(), ladder));
        return services.AddSingleton<FoundNotes>().AddHosted<FoundKeeper>().AddHosted<ViewersPump>()
            .AddSingleton<IViewersOutput>(provider => provider.GetRequiredService<ViewersPump>())
            .AddOutput<AskDesk>()
            .AddSingleton<IChatListener, ChatAsks>();
    }
}
