using Companion.Server.Chat;
using Companion.Server.Chat.Irc;
using Companion.Server.Chat.Irc.Talk;
using Companion.Server.Tests.Chat.Servers;

namespace Companion.Server.Tests.Chat.Irc;

/// <summary>What becomes of the connection: cut, dead, encrypted, refused, and the server gone and back.</summary>
public sealed class ConnectionTests(NgircdFixture fixture) : IClassFixture<NgircdFixture>
{
    private static readonly TimeSpan Step = TimeSpan.FromSeconds(1);

    private readonly Ngircd _server = fixture.Server;

    [Fact]
    public async Task Cut_off_it_comes_back_and_answers()
    {
        await using var proxy = new CuttingProxy(_server.Port);
        await using var alice = await Viewer.Join(_server, "#cut", "alice");
        await using var chat = await ChatHarness.Connect(_server.Settings("#cut") with { Port = proxy.Port });
        for (var cut = 1; cut <= 3; cut++)
        {
            proxy.Cut();
            await chat.Tells(ChatPhase.Connecting);
            await chat.Tells(ChatPhase.Connected, Step);
            await alice.Say($"hint {cut}");
            Assert.Equal($"alice: hint {cut}", await alice.Hears());
        }

        Assert.Equal(4, proxy.Connections);
    }

    [Fact]
    public async Task A_dead_connection_is_noticed_by_its_silence()
    {
        await using var proxy = new CuttingProxy(_server.Port);
        await using var chat = await ChatHarness.Connect(_server.Settings("#dead") with { Port = proxy.Port, Nick = "deadbot" });
        proxy.Die();
        chat.Clock.Advance(IdleWatch.Silence);
        await chat.Until(() => chat.Told.Any(status => status.Text.Contains(Reasons.Silent, StringComparison.Ordinal)), TimeSpan.FromSeconds(5));

        proxy.Revive();
        await chat.Tells(ChatPhase.Connected, Step);
        Assert.True(proxy.Connections > 1);
    }

    [Fact]
    public async Task A_server_that_goes_and_comes_is_found_again()
    {
        await using var server = new Ngircd();
        await server.Start();
        await using var chat = await ChatHarness.Connect(server.Settings("#grid"));
        await server.Stop();
        await chat.Tells(ChatPhase.Connecting);
        await chat.Tells(Reasons.Unreachable, Step);

        await server.Start();
        await chat.Tells(ChatPhase.Connected, Step);
        await using var alice = await Viewer.Join(server, "#grid", "alice");
        await alice.Say("hint");
        Assert.Equal("alice: hint", await alice.Hears());
    }

    [Fact]
    public async Task Over_TLS_it_trusts_the_certificate_that_it_was_given_and_no_other()
    {
        var settings = _server.Settings("#tls") with { Server = "localhost", Port = _server.TlsPort, Tls = true, Nick = "tlsbot" };
        await using var trusting = await ChatHarness.Connect(settings with { Certificate = _server.Certificate });
        await using var alice = await Viewer.Join(_server, "#tls", "secure");
        await alice.Say("hint");
        Assert.Equal("secure: hint", await alice.Hears("tlsbot"));

        await using var distrusting = await ChatHarness.Start(settings with { Nick = "nobody" });
        await distrusting.Tells(Reasons.BadCertificate);
        Assert.Equal(ChatPhase.Connecting, distrusting.Newest.Phase);
    }

    [Fact]
    public async Task A_wrong_password_stops_it_and_the_right_one_lets_it_in()
    {
        await using var server = new Ngircd { Password = "s3same" };
        await server.Start();

        await using var wrong = await ChatHarness.Start(server.Settings("#grid"), password: "guess");
        Assert.Equal($"The chat has stopped. {Reasons.WrongPassword}", (await wrong.Tells(ChatPhase.Stopped)).Text);
        await using var right = await ChatHarness.Connect(server.Settings("#grid"), password: "s3same");
        Assert.All(wrong.Told.Concat(right.Told), status => Assert.DoesNotContain("guess", status.Text, StringComparison.Ordinal));
    }

    [Fact]
    public async Task Where_nobody_answers_it_says_so_and_goes_on_trying()
    {
        await using var server = new Ngircd();
        await using var chat = await ChatHarness.Start(server.Settings("#grid"));
        await chat.Until(() => chat.Told.Count(status => status.Text.Contains(Reasons.Unreachable, StringComparison.Ordinal)) == 5, Step);

        Assert.All(chat.Told, status => Assert.Equal(ChatPhase.Connecting, status.Phase));
    }
}
