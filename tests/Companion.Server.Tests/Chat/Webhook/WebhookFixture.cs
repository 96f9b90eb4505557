using Companion.Server.Chat;
using Companion.Server.Data;
using Companion.Server.Settings;
using Companion.Server.Tests.Running;
using Microsoft.AspNetCore.Builder;
using Microsoft.Extensions.DependencyInjection;
using Microsoft.Extensions.DependencyInjection.Extensions;

namespace Companion.Server.Tests.Chat.Webhook;

/// <summary>A server with a shared secret, which answers each message with the same text, and a program that knows the secret.</summary>
public sealed class WebhookFixture : IAsyncLifetime
{
    private readonly TemporaryFolder _folder = new();
    private readonly SigningProgram _program = new();

    internal RunningCompanion Companion { get; private set; } = null!;

    public async ValueTask InitializeAsync() => Companion = await Start(_folder.Path, adjust: EchoOnly);

    /// <summary>Starts a server with the shared secret in a folder.</summary>
    internal static async Task<RunningCompanion> Start(
        string folder, ServerSettings? settings = null, Action<WebApplicationBuilder>? adjust = null)
    {
        var file = DataFolder.Open(folder).ChatSecret;
        OwnerOnly.MakeFile(file);
        await File.WriteAllTextAsync(file, SigningProgram.Key);
        return await RunningCompanion.Start(folder, adjust, settings);
    }

    /// <summary>Has a server answer each message with the same text, and nothing else.</summary>
    internal static void EchoOnly(WebApplicationBuilder builder) =>
        builder.Services.RemoveAll<IChatListener>().AddSingleton<IChatListener>(new Echo());

    /// <summary>Posts a message, well signed.</summary>
    /// <param name="body">The message.</param>
    /// <param name="spoil">Changes the request after that.</param>
    /// <param name="address">Which server; null for the fixture's own.</param>
    internal Task<HttpResponseMessage> Post(string body, Action<HttpRequestMessage>? spoil = null, Uri? address = null) =>
        _program.Post(address ?? Companion.Address, body, spoil);

    public async ValueTask DisposeAsync()
    {
        _program.Dispose();
        await Companion.DisposeAsync();
        _folder.Dispose();
    }
}
