using System.Diagnostics;
using System.Net;
using System.Net.Sockets;
using Companion.Server.Chat.Irc;
using Companion.Server.Tests.Running;

namespace Companion.Server.Tests.Chat.Servers;

/// <summary>A real IRC server on ports of its own of this machine, as a child process with its configuration in a temporary folder.</summary>
internal abstract class IrcServer : IAsyncDisposable
{
    private Process? _process;

    /// <summary>Where clients connect.</summary>
    public int Port { get; } = FreePorts.Next();

    /// <summary>Where its files are.</summary>
    protected TemporaryFolder Folder { get; } = new();

    /// <summary>The settings of a chat there.</summary>
    public IrcSettings Settings(string channel) => new() { Server = "127.0.0.1", Port = Port, Tls = false, Nick = "hintbot", Channel = channel };

    /// <summary>Starts it and waits until it can be reached.</summary>
    public async Task Start()
    {
        _process = Launch();
        while (true)
        {
            if (_process.HasExited)
                throw new InvalidOperationException($"The IRC server ended by itself with code {_process.ExitCode}.");
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
