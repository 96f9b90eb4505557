using System.Security.Cryptography;
using Companion.Server.Chat.Irc;
using Companion.Server.Chat.Irc.Pace;
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
        return services.AddSingleton<IrcChat>()
            .AddSingleton<IChat>(provider => provider.GetRequiredService<IrcChat>())
            .AddHostedService(provider => provider.GetRequiredService<IrcChat>());
    }
}
