using System.Net;
using System.Threading.Channels;
using Companion.Server.Chat;
using Companion.Server.Chat.Webhook;
using Companion.Server.Tests.Running;

namespace Companion.Server.Tests.Chat.Webhook;

/// <summary>An address that answers are posted to, which takes only what is well signed.</summary>
internal sealed class Inbox : IAsyncDisposable
{
    private readonly Channel<string> _bodies = Channel.CreateUnbounded<string>();
    private readonly HttpListener _door = new();
    private readonly string _key;
    private readonly Task _running;

    public Inbox(string key)
    {
        _key = key;
        Address = $"http://127.0.0.1:{FreePorts.Next()}/";
        _door.Prefixes.Add(Address);
        _door.Start();
        _running = Run();
    }

    public string Address { get; }

    /// <summary>What it answers.</summary>
    public int Status { get; set; } = 204;

    public async Task<string> Next() =>
        await _bodies.Reader.ReadAsync(TestContext.Current.CancellationToken).AsTask().WaitAsync(ChatHarness.Patience);

    public async ValueTask DisposeAsync()
    {
        _door.Close();
        await _running;
    }

    private async Task Run()
    {
        try
        {
            while (true)
            {
                var call = await _door.GetContextAsync();
                using var reader = new StreamReader(call.Request.InputStream);
                var body = await reader.ReadToEndAsync();
                var expected = Signature.Of(new Secret(_key), call.Request.Headers[Signature.TimeHeader]!, System.Text.Encoding.UTF8.GetBytes(body));
                _bodies.Writer.TryWrite(Signature.Fits(call.Request.Headers[Signature.Header]!, expected) ? body : "badly signed");
                call.Response.StatusCode = Status;
                call.Response.Close();
            }
        }
        catch (Exception closed) when (closed is HttpListenerException or ObjectDisposedException)
        {
            // The test is over.
        }
    }
}
