using System.Buffers;
using System.Buffers.Text;
using System.Diagnostics;
using System.Net;
using System.Net.Sockets;
using System.Net.WebSockets;

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
internal sealed class RawViewer(Reading reading, Action<long, long> arrived) : IDisposable
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
            if (SequenceIn(message.WrittenSpan) is { } sequence)
                arrived(sequence, at);
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

    // Looked for and not parsed: thousands of viewers read on the server's own cores.
    private static long? SequenceIn(ReadOnlySpan<byte> message)
    {
        var name = "\"sequence\":"u8;
        return message.IndexOf(name) is var at and >= 0 && Utf8Parser.TryParse(message[(at + name.Length)..], out long sequence, out _)
            ? sequence
            : null;
    }
}
