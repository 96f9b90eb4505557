using System.Net;
using System.Net.Sockets;
using System.Text;
using System.Threading.Channels;
using Companion.Server.Chat.Irc.Lines;

namespace Companion.Server.Tests.Chat.Servers;

/// <summary>Somebody in the channel with a bare connection, who can send any bytes.</summary>
internal sealed class Viewer : IAsyncDisposable
{
    private readonly Channel<string> _lines = Channel.CreateUnbounded<string>();
    private readonly TcpClient _socket = new() { NoDelay = true };
    private readonly string _channel;
    private Task _reading = Task.CompletedTask;

    private Viewer(string channel) => _channel = channel;

    /// <summary>Comes into the channel.</summary>
    /// <param name="server">The server.</param>
    /// <param name="channel">The channel.</param>
    /// <param name="nick">The nick.</param>
    /// <param name="signIn">The answer to SASL PLAIN of an account to sign in to, or null.</param>
    public static async Task<Viewer> Join(IrcServer server, string channel, string nick, string? signIn = null)
    {
        var viewer = new Viewer(channel);
        await viewer._socket.ConnectAsync(IPAddress.Loopback, server.Port, TestContext.Current.CancellationToken);
        viewer._reading = viewer.Read();
        await viewer.Send($"NICK {nick}", $"USER {nick} 0 * :{nick}");
        if (signIn is not null)
            await viewer.SignIn(signIn);
        await viewer.Sees(message => message.Command == "001");
        await viewer.Send($"JOIN {channel}");
        await viewer.Sees(message => message.Command == "366");
        return viewer;
    }

    /// <summary>Sends lines.</summary>
    public Task Send(params string[] lines) => SendBytes(Encoding.UTF8.GetBytes(string.Concat(lines.Select(line => line + "\r\n"))));

    /// <summary>Sends bytes as they are.</summary>
    public async Task SendBytes(byte[] bytes) => await _socket.GetStream().WriteAsync(bytes, TestContext.Current.CancellationToken);

    /// <summary>Says something in the channel.</summary>
    public Task Say(string text) => Send($"PRIVMSG {_channel} :{text}");

    /// <summary>Waits for a line, and passes over others.</summary>
    public async Task<IrcMessage> Sees(Func<IrcMessage, bool> isWanted)
    {
        List<string> others = [];
        using var late = CancellationTokenSource.CreateLinkedTokenSource(TestContext.Current.CancellationToken);
        late.CancelAfter(ChatHarness.Patience);
        try
        {
            await foreach (var line in _lines.Reader.ReadAllAsync(late.Token))
            {
                if (IrcFormat.Read(line) is { } message && isWanted(message))
                    return message;
                others.Add(line);
            }
        }
        catch (OperationCanceledException) when (!TestContext.Current.CancellationToken.IsCancellationRequested)
        {
            // Said below, with what came instead.
        }

        throw new TimeoutException($"No wanted line came, only:\n{string.Join('\n', others)}");
    }

    /// <summary>Waits until the bot says something, and returns that.</summary>
    public async Task<string> Hears(string nick = "hintbot") =>
        (await Sees(message => message.Command == "PRIVMSG" && message.Source?.Nick == nick)).Last;

    public async ValueTask DisposeAsync()
    {
        _socket.Dispose();
        await _reading;
    }

    private async Task SignIn(string answer)
    {
        await Send("CAP REQ sasl", "AUTHENTICATE PLAIN");
        await Sees(message => message.Command == "AUTHENTICATE");
        await Send($"AUTHENTICATE {answer}");
        await Sees(message => message.Command == "903");
        await Send("CAP END");
    }

    private async Task Read()
    {
        try
        {
            using var reader = new StreamReader(_socket.GetStream());
            while (await reader.ReadLineAsync() is { } line)
            {
                if (line.StartsWith("PING", StringComparison.Ordinal))
                    await Send(line.Replace("PING", "PONG", StringComparison.Ordinal));
                _lines.Writer.TryWrite(line);
            }
        }
        catch (Exception gone) when (gone is IOException or ObjectDisposedException or OperationCanceledException)
        {
            // Either end has closed the connection.
        }
    }
}
