using System.Text;
using Companion.Server.Access;
using Companion.Server.Chat.Webhook;

namespace Companion.Server.Tests.Chat.Webhook;

/// <summary>A program that brings a chat's messages over HTTP and signs well.</summary>
internal sealed class SigningProgram : IDisposable
{
    public const string Key = "0123456789abcdef0123456789abcdef";

    private readonly HttpClient _web = new();
    private int _sent;

    /// <summary>Posts a message.</summary>
    /// <param name="companion">To which server.</param>
    /// <param name="body">The message.</param>
    /// <param name="spoil">Changes the request after it was signed.</param>
    public async Task<HttpResponseMessage> Post(Uri companion, string body, Action<HttpRequestMessage>? spoil = null)
    {
        var octets = Encoding.UTF8.GetBytes(body);
        // Another second each time: the same message may come again, the same request may not.
        var time = Signature.Text(TimeProvider.System.GetUtcNow().AddSeconds(_sent++));
        using var request = new HttpRequestMessage(HttpMethod.Post, new Uri(companion, ToolPaths.ChatMessages))
        {
            Content = new ByteArrayContent(octets),
        };
        request.Headers.Add(Signature.TimeHeader, time);
        request.Headers.Add(Signature.Header, Convert.ToHexStringLower(Signature.Of(new(Key), time, octets)));
        spoil?.Invoke(request);
        return await _web.SendAsync(request, TestContext.Current.CancellationToken);
    }

    public void Dispose() => _web.Dispose();
}
