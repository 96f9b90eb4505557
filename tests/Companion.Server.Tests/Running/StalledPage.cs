using System.Net;
using System.Net.Sockets;
using System.Net.WebSockets;
using System.Text;
using Companion.Server.Access;

namespace Companion.Server.Tests.Running;

/// <summary>Opens pages that connect as SignalR's JSON protocol has it, and never read from then on.</summary>
internal static class StalledPage
{
    public static async Task<ClientWebSocket> Open(RunningCompanion companion, string hub, AccessRole role)
    {
        var socket = new ClientWebSocket();
        socket.Options.SetRequestHeader("Authorization", $"Bearer {companion.Keys[role].Reveal()}");
        socket.Options.SetRequestHeader("Origin", companion.Address.GetLeftPart(UriPartial.Authority));
        using var narrow = new HttpMessageInvoker(new SocketsHttpHandler { ConnectCallback = ConnectNarrow });
        await socket.ConnectAsync(
            new Uri($"ws://{companion.Address.Authority}{hub}"), narrow, TestContext.Current.CancellationToken);
        await socket.SendAsync(
            Encoding.UTF8.GetBytes("{\"protocol\":\"json\",\"version\":1}\u001e"),
            WebSocketMessageType.Text,
            endOfMessage: true,
            TestContext.Current.CancellationToken);
        return socket;
    }

    private static async ValueTask<Stream> ConnectNarrow(SocketsHttpConnectionContext context, CancellationToken cancel)
    {
        var socket = new Socket(AddressFamily.InterNetwork, SocketType.Stream, ProtocolType.Tcp) { ReceiveBufferSize = 4096 };
        await socket.ConnectAsync(IPAddress.Loopback, context.DnsEndPoint.Port, cancel);
        return new NetworkStream(socket, ownsSocket: true);
    }
}
