using System.Text;
using Companion.Server.Access;
using Companion.Server.Chat;
using Companion.Server.Chat.Webhook;
using Companion.Server.Data;
using Companion.Server.Settings;
using Companion.Server.Tests.Running;
using Microsoft.Extensions.DependencyInjection;

namespace Companion.Server.Tests.Chat.Webhook;

/// <summary>A server with a shared secret, which answers each message with the same text, and a program that signs well.</summary>
public sealed class WebhookFixture : IAsyncLifetime
{
    public const string Key = "0123456789abcdef0123456789abcdef";

    private readonly TemporaryFolder _folder = new();
    private readonly HttpClient _web = new();
    private int _sent;

    internal RunningCompanion Companion { get; private set; } = null!;

    public async ValueTask InitializeAsync() => Companion = await Start(_folder.Path);

    /// <summary>Starts a server with the shared secret in a folder.</summary>
    internal static async Task<RunningCompanion> Start(string folder, ServerSettings? settings = null)
    {
        var file = DataFolder.Open(folder).ChatSecret;
        OwnerOnly.MakeFile(file);
        await File.WriteAllTextAsync(file, Key);
        return await RunningCompanion.Start(folder, builder => builder.Services.AddSingleton<IChatListener>(new Echo()), settings);
    }

    /// <summary>Posts a message, well signed.</summary>
    /// <param name="body">The message.</param>
    /// <param name="spoil">Changes the request after that.</param>
    /// <param name="address">Which server; null for the fixture's own.</param>
    internal async Task<HttpResponseMessage> Post(string body, Action<HttpRequestMessage>? spoil = null, Uri? address = null)
    {
        var octets = Encoding.UTF8.GetBytes(body);
        // Another second each time: the same message may come again, the same request may not.
        var time = Signature.Text(TimeProvider.System.GetUtcNow().AddSeconds(_sent++));
        using var request = new HttpRequestMessage(HttpMethod.Post, new Uri(address ?? Companion.Address, ToolPaths.ChatMessages))
        {
            Content = new ByteArrayContent(octets),
        };
        request.Headers.Add(Signature.TimeHeader, time);
        request.Headers.Add(Signature.Header, Convert.ToHexStringLower(Signature.Of(new(Key), time, octets)));
        spoil?.Invoke(request);
        return await _web.SendAsync(request, TestContext.Current.CancellationToken);
    }

    public async ValueTask DisposeAsync()
    {
        _web.Dispose();
        await Companion.DisposeAsync();
        _folder.Dispose();
    }
}
