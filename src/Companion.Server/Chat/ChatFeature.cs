using System.Security.Cryptography;
using Companion.Server.Chat.Irc;
using Companion.Server.Chat.Webhook;
using Companion.Server.Data;
using Companion.Server.Live.Loop;
using Companion.Server.Settings;

namespace Companion.Server.Chat;

/// <summary>The ways in and out of chats. What answers there is an <see cref="IChatListener"/>, and is added elsewhere.</summary>
internal static class ChatFeature
{
    /// <summary>Adds the chats.</summary>
    /// <param name="services">Where to.</param>
    /// <param name="folder">Where secrets may lie.</param>
    /// <param name="settings">Which chats.</param>
    /// <exception cref="PlainException">A secret or a certificate cannot be used.</exception>
    public static IServiceCollection AddChat(this IServiceCollection services, DataFolder folder, ServerSettings settings)
    {
        services.AddSingleton(ChatSecrets.Read(folder, settings.Chat)).AddSingleton<ChatIntake>();
        services.AddSingleton(settings.Chat with { Irc = settings.Chat.Irc.In(folder) });
        services.AddSingleton<IChatStatusOutput>(provider => provider.GetRequiredService<SessionLoop>());
        services.AddSingleton(new Backoff(new Random(RandomNumberGenerator.GetInt32(int.MaxValue))));
        services.AddSingleton<WebhookEndpoint>();
        return services.AddChat<IrcChat>().AddChat<AnswerPoster>();
    }

    /// <summary>Maps the way in over HTTP.</summary>
    /// <param name="app">The server.</param>
    public static void MapChat(this WebApplication app) => WebhookEndpoint.Map(app);

    private static IServiceCollection AddChat<T>(this IServiceCollection services)
        where T : class, IHostedService, IChat => services
            .AddSingleton<T>()
            .AddSingleton<IChat>(provider => provider.GetRequiredService<T>())
            .AddHostedService(provider => provider.GetRequiredService<T>());
}
