using System.Buffers;
using System.Diagnostics;
using System.Globalization;
using System.Net;
using System.Net.Sockets;
using System.Net.WebSockets;
using System.Text;
using System.Text.RegularExpressions;

namespace Companion.Benchmarks.Load;

/// <summary>How a viewer's machine reads.</summary>
internal enum Reading
{
    /// <summary>At once.</summary>
    Prompt,

    /// <summary>A few bytes a second: less than is sent.</summary>
    Slow,

    /// <summary>Not at all.</summary>
    Never,
}

/// <summary>
/// A viewer's connection, as SignalR's JSON protocol has it over a WebSocket. It is much lighter than a client of the library, so that
/// thousands fit beside the server on one machine, and it can read as badly as is wanted.
/// </summary>
internal sealed partial class RawViewer(Reading reading, Action<long, long> arrived) : IDisposable
{
    private const byte End = 0x1E;

    private static readonly byte[] Handshake = [.. """{"protocol":"json","version":1}"""u8, End];
    private static readonly byte[] Ping = [.. """{"type":6}"""u8, End];

    private readonly ClientWebSocket _socket = new();

    /// <summary>Connects, and reads from then on.</summary>
    /// <param name="hub">The hub, over http.</param>
    /// <param name="key">What opens it.</param>
    public async Task Connect(Uri hub, string key)
    {
        _socket.Options.SetRequestHeader("Authorization", $"Bearer {key}");
        _socket.Options.SetRequestHeader("Origin", hub.GetLeftPart(UriPartial.Authority));
        using var http = new HttpMessageInvoker(new SocketsHttpHandler { ConnectCallback = Open });
        await _socket.ConnectAsync(new UriBuilder(hub) { Scheme = "ws" }.Uri, http, CancellationToken.None);
        await Send(Handshake);
        _ = Guarded(KeepAlive());
        if (reading != Reading.Never)
            _ = Guarded(Read());
    }

    public void Dispose() => _socket.Dispose();

    private async ValueTask<Stream> Open(SocketsHttpConnectionContext context, CancellationToken cancel)
    {
        var socket = new Socket(AddressFamily.InterNetwork, SocketType.Stream, ProtocolType.Tcp) { NoDelay = true };
        if (reading != Reading.Prompt)
            socket.ReceiveBufferSize = 4096;
        await socket.ConnectAsync(IPAddress.Loopback, context.DnsEndPoint.Port, cancel);
        return new NetworkStream(socket, ownsSocket: true);
    }

    private ValueTask Send(byte[] message) =>
        _socket.SendAsync(message.AsMemory(), WebSocketMessageType.Text, endOfMessage: true, CancellationToken.None);

    // The server gives up on who says nothing for half a minute.
    private async Task KeepAlive()
    {
        while (true)
        {
            await Task.Delay(TimeSpan.FromSeconds(10));
            await Send(Ping);
        }
    }

    private async Task Read()
    {
        var message = new ArrayBufferWriter<byte>();
        while (true)
        {
            var got = await _socket.ReceiveAsync(message.GetMemory(reading == Reading.Slow ? 64 : 8192), CancellationToken.None);
            var at = Stopwatch.GetTimestamp();
            message.Advance(got.Count);
            if (reading == Reading.Slow)
                await Task.Delay(TimeSpan.FromSeconds(1));
            if (!got.EndOfMessage)
                continue;
            if (Sequence().Match(Encoding.UTF8.GetString(message.WrittenSpan)) is { Success: true } found)
                arrived(long.Parse(found.Groups[1].ValueSpan, CultureInfo.InvariantCulture), at);
            message.ResetWrittenCount();
        }
    }

    private static async Task Guarded(Task task)
    {
        try
        {
            await task;
        }
        catch (Exception gone) when (gone is WebSocketException or ObjectDisposedException or OperationCanceledException)
        {
            // Cut off for reading badly, or the measurement is over.
        }
    }

    [GeneratedRegex("\"sequence\":([0-9]+)")]
    private static partial Regex Sequence();
}
