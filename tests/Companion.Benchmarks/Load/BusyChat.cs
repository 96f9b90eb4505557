using System.Diagnostics;
using System.Net;
using System.Net.Sockets;
using Companion.Server.Tests.Chat.Servers;
using Companion.Server.Tests.Running;

namespace Companion.Benchmarks.Load;

/// <summary>A real IRC server and people who write there all the time.</summary>
internal sealed class BusyChat : IAsyncDisposable
{
    private const string Channel = "#load";
    private const int Talkers = 20;

    // What a busy chat says: most of it is nothing to us.
    private static readonly string[] Lines =
    [
        "hello all", "!hint", "nice one", "what about row five?", "!call r5c5 7", "first time here", "lol", "!why r1c1", "good evening",
        "I see it", "!left", "is that a pair?", "!hint 2", "no way", "wow", "!call r2c8 3", "so fast", "who set it?", "!puzzle", "hm",
    ];

    private readonly CancellationTokenSource _stop = new();
    private readonly string _folder = Directory.CreateTempSubdirectory("companion-load-").FullName;
    private readonly List<TcpClient> _sockets = [];
    private Process? _server;

    public int Port { get; } = FreePorts.Next();

    /// <summary>The settings of the companion for this chat.</summary>
    public object Settings => new { irc = new { server = "127.0.0.1", port = Port, tls = false, nick = "hintbot", channel = Channel } };

    /// <summary>How many lines were written so far.</summary>
    public long Written { get; private set; }

    public async Task StartAsync()
    {
        var configuration = Path.Combine(_folder, "ngircd.conf");
        await File.WriteAllTextAsync(configuration, NgircdConfiguration.Text(Port));
        _server = DebianPackages.Irc.Start("ngircd", "--nodaemon", "--config", configuration);
        for (var talker = 0; talker < Talkers; talker++)
            _sockets.Add(await JoinAsync($"talk{talker}"));
    }

    /// <summary>Has so many lines written a second from now on.</summary>
    public void Talk(int linesPerSecond) => _ = TalkAsync(TimeSpan.FromSeconds(1) / linesPerSecond);

    public async ValueTask DisposeAsync()
    {
        await _stop.CancelAsync();
        _sockets.ForEach(socket => socket.Dispose());
        if (_server is not null)
        {
            _server.Kill();
            await _server.WaitForExitAsync();
            _server.Dispose();
        }

        Directory.Delete(_folder, recursive: true);
        _stop.Dispose();
    }

    private async Task<TcpClient> JoinAsync(string nick)
    {
        while (true)
        {
            var socket = new TcpClient { NoDelay = true };
            try
            {
                await socket.ConnectAsync(IPAddress.Loopback, Port);
                var stream = socket.GetStream();
                await stream.WriteAsync(System.Text.Encoding.UTF8.GetBytes($"NICK {nick}\r\nUSER {nick} 0 * :{nick}\r\nJOIN {Channel}\r\n"));
                _ = AnswerPingsAsync(stream);
                return socket;
            }
            catch (SocketException)
            {
                socket.Dispose();
                await Task.Delay(50);
            }
        }
    }

    private static async Task AnswerPingsAsync(NetworkStream stream)
    {
        try
        {
            using var reader = new StreamReader(stream, leaveOpen: true);
            while (await reader.ReadLineAsync() is { } line)
            {
                if (line.StartsWith("PING", StringComparison.Ordinal))
                    await stream.WriteAsync(System.Text.Encoding.UTF8.GetBytes(line.Replace("PING", "PONG", StringComparison.Ordinal) + "\r\n"));
            }
        }
        catch (Exception over) when (over is IOException or ObjectDisposedException)
        {
            // The measurement is over.
        }
    }

    private async Task TalkAsync(TimeSpan pause)
    {
        try
        {
            var began = Stopwatch.GetTimestamp();
            while (!_stop.IsCancellationRequested)
            {
                // As many as should have been written by now, so that a late timer does not make it fewer.
                for (var due = Stopwatch.GetElapsedTime(began) / pause; Written < due; Written++)
                {
                    var line = $"PRIVMSG {Channel} :{Lines[Written * 7 % Lines.Length]}\r\n";
                    await _sockets[(int)(Written % Talkers)].GetStream().WriteAsync(System.Text.Encoding.UTF8.GetBytes(line));
                }

                await Task.Delay(pause, _stop.Token);
            }
        }
        catch (Exception over) when (over is IOException or ObjectDisposedException or OperationCanceledException)
        {
            // The measurement is over.
        }
    }
}
