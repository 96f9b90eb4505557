using System.Net;
using System.Net.Sockets;
using System.Text;
using Companion.Server.Chat;
using Companion.Server.Chat.Irc;

namespace Companion.Server.Tests.Chat.Irc;

/// <summary>A server that keeps no rule, played by the test.</summary>
public sealed class StrangeServerTests : IAsyncLifetime
{
    private readonly TcpListener _door = new(IPAddress.Loopback, 0);
    private ChatHarness _chat = null!;
    private TcpClient _server = null!;
    private StreamReader _sent = null!;

    public async ValueTask InitializeAsync()
    {
        _door.Start();
        var port = ((IPEndPoint)_door.LocalEndpoint).Port;
        _chat = await ChatHarness.Start(new() { Server = "127.0.0.1", Port = port, Tls = false, Channel = "#grid" });
        await Accept();
    }

    [Fact]
    public async Task Nonsense_between_the_lines_is_passed_over_and_pings_are_answered()
    {
        await Say([0xFF, 0x00, 0xFE, (byte)'\n']);
        await Say(Encoding.UTF8.GetBytes(new string('x', 300_000) + "\n"));
        await Say("\r\n\r\n:\r\n@=;;;\r\n:irc 999 :\r\nPING :to\0ken\r\nPING :one\n"u8.ToArray());
        await Sends("PONG one");
        await Say(":irc 001 companion :Welcome\n:companion!c@h JOIN #grid\nPING two\r\r\n"u8.ToArray());
        await Sends("PONG two");
        await _chat.Tells(ChatPhase.Connected);

        await Say(":a!b@c PRIVMSG #grid :hint\n"u8.ToArray());
        await Sends("PRIVMSG #grid :a: hint");
    }

    [Fact]
    public async Task Names_that_no_line_can_hold_end_the_visit_and_not_the_chat()
    {
        await Say(":irc 001 :a b\r\n:irc 005 x BOT=B :are supported\r\n"u8.ToArray());
        await _chat.Tells(Reasons.Closed);

        var coming = Accept();
        await _chat.Until(() => coming.IsCompleted, TimeSpan.FromSeconds(1));
        await Sends("CAP LS 302");
    }

    [Fact]
    public async Task A_server_that_hangs_up_at_once_is_tried_again()
    {
        await Sends("NICK companion");
        for (var attempt = 0; attempt < 3; attempt++)
        {
            _server.Dispose();
            var coming = Accept();
            await _chat.Until(() => coming.IsCompleted, TimeSpan.FromSeconds(1));
        }

        await Sends("NICK companion");
    }

    [Fact]
    public async Task When_the_program_ends_it_says_good_bye()
    {
        await Sends("NICK companion");
        await _chat.DisposeAsync();

        await Sends("QUIT");
    }

    public async ValueTask DisposeAsync()
    {
        await _chat.DisposeAsync();
        _sent.Dispose();
        _server.Dispose();
        _door.Dispose();
    }

    private async Task Accept()
    {
        _server = await _door.AcceptTcpClientAsync(TestContext.Current.CancellationToken);
        _sent = new(_server.GetStream());
    }

    private async Task Say(byte[] bytes) => await _server.GetStream().WriteAsync(bytes, TestContext.Current.CancellationToken);

    private async Task Sends(string wanted)
    {
        string? line;
        do
        {
            line = await _sent.ReadLineAsync(TestContext.Current.CancellationToken).AsTask().WaitAsync(ChatHarness.Patience);
            Assert.NotNull(line);
        }
        while (line != wanted);
    }
}
