using System.Collections.Concurrent;
using System.Net;
using System.Net.Sockets;

namespace Companion.Server.Tests.Chat.Servers;

/// <summary>A stretch of wire in front of a server that can be cut, or go dead without being cut.</summary>
internal sealed class CuttingProxy : IAsyncDisposable
{
    private readonly TcpListener _door = new(IPAddress.Loopback, 0);
    private readonly ConcurrentBag<TcpClient> _ends = [];
    private readonly int _port;
    private readonly Task _running;
    private volatile bool _isDead;

    public CuttingProxy(int port)
    {
        _port = port;
        _door.Start();
        _running = Run();
    }

    public int Port => ((IPEndPoint)_door.LocalEndpoint).Port;

    /// <summary>How many have come through.</summary>
    public int Connections { get; private set; }

    /// <summary>Closes all connections.</summary>
    public void Cut()
    {
        while (_ends.TryTake(out var end))
            end.Dispose();
    }

    /// <summary>Swallows all that is sent from now on, until it is revived.</summary>
    public void Die() => _isDead = true;

    /// <summary>Lets new connections through again.</summary>
    public void Revive() => _isDead = false;

    public async ValueTask DisposeAsync()
    {
        _door.Stop();
        Cut();
        await _running;
    }

    private async Task Run()
    {
        try
        {
            while (true)
            {
                var near = await _door.AcceptTcpClientAsync();
                Connections++;
                var far = new TcpClient();
                _ends.Add(near);
                _ends.Add(far);
                await far.ConnectAsync(IPAddress.Loopback, _port);
                _ = Pass(near, far);
                _ = Pass(far, near);
            }
        }
        catch (Exception closed) when (closed is SocketException or ObjectDisposedException or InvalidOperationException)
        {
            // The test is over.
        }
    }

    private async Task Pass(TcpClient from, TcpClient to)
    {
        var bytes = new byte[4096];
        try
        {
            while (await from.GetStream().ReadAsync(bytes) is var count and > 0)
            {
                if (!_isDead)
                    await to.GetStream().WriteAsync(bytes.AsMemory(0, count));
            }
        }
        catch (Exception cut) when (cut is IOException or ObjectDisposedException or InvalidOperationException)
        {
            // Cut.
        }

        from.Dispose();
        to.Dispose();
    }
}
