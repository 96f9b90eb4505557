using System.Diagnostics;
using System.Net;
using System.Net.Sockets;

namespace Companion.Server.Tests.Running;

/// <summary>A real server of another kind on a port of its own of this machine, as a child process with its files in a temporary folder.</summary>
internal abstract class ChildServer : IAsyncDisposable
{
    private Process? _process;

    /// <summary>Where clients connect; it stays over restarts.</summary>
    public int Port { get; } = FreePorts.Next();

    /// <summary>Where its files are.</summary>
    protected TemporaryFolder Folder { get; } = new();

    /// <summary>Starts it and waits until it can be reached.</summary>
    public async Task Start()
    {
        _process = Launch();
        while (true)
        {
            if (_process.HasExited)
                throw new InvalidOperationException($"{GetType().Name} ended by itself with code {_process.ExitCode}.");
            try
            {
                using var socket = new TcpClient();
                await socket.ConnectAsync(IPAddress.Loopback, Port, TestContext.Current.CancellationToken);
                return;
            }
            catch (SocketException)
            {
                await Task.Delay(20, TestContext.Current.CancellationToken);
            }
        }
    }

    /// <summary>Ends it at once.</summary>
    public async Task Stop()
    {
        if (_process is null)
            return;
        _process.Kill();
        await _process.WaitForExitAsync(CancellationToken.None);
        _process.Dispose();
        _process = null;
    }

    public async ValueTask DisposeAsync()
    {
        await Stop();
        Folder.Dispose();
    }

    protected abstract Process Launch();
}
