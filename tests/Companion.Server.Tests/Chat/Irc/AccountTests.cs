using System.Collections.Immutable;
using Companion.Server.Chat;
using Companion.Server.Chat.Irc;
using Companion.Server.Chat.Irc.Lines;
using Companion.Server.Tests.Chat.Servers;

namespace Companion.Server.Tests.Chat.Irc;

/// <summary>Against a real server of IRCv3: InspIRCd, with accounts.</summary>
public sealed class AccountTests(InspircdFixture fixture) : IClassFixture<InspircdFixture>
{
    // The worked example of IRCv3, SASL: jilles with the password sesame.
    private const string Sasl = "amlsbGVzAGppbGxlcwBzZXNhbWU=";

    private readonly Inspircd _server = fixture.Server;

    [Fact]
    public async Task It_signs_in_to_its_account_and_says_that_it_is_a_program()
    {
        await using var alice = await Viewer.Join(_server, "#account", "alice");
        await using var chat = await ChatHarness.Connect(
            _server.Settings("#account") with { Account = "jilles", Nick = "accbot" }, password: "sesame");
        await alice.Send("WHOIS accbot");

        Assert.Equal("jilles", (await alice.Sees(message => message.Command == "330"))[2]);
        await alice.Sees(message => message.Command == "335"); // is a bot on this server
    }

    [Fact]
    public async Task A_wrong_password_stops_it_with_a_plain_sentence()
    {
        await using var chat = await ChatHarness.Start(
            _server.Settings("#account") with { Account = "jilles", Nick = "wrongbot" }, password: "guess");

        Assert.Equal(new(ChatPhase.Stopped, $"The chat has stopped. {Reasons.WrongAccount}"), await chat.Tells(ChatPhase.Stopped));
    }

    [Fact]
    public async Task A_server_without_its_accounts_is_not_entered_without_one()
    {
        await using var alone = new Inspircd();
        await alone.Start();
        await using var chat = await ChatHarness.Start(alone.Settings("#grid") with { Account = "jilles" }, password: "sesame");
        await chat.Tells(Reasons.SignInAway);

        await using var accounts = await AccountsServer.Link(alone, "jilles", "sesame");
        await chat.Tells(ChatPhase.Connected, TimeSpan.FromSeconds(1));
    }

    [Fact]
    public async Task Lines_bring_account_time_and_name_and_programs_and_echoes_are_not_heard()
    {
        var listener = new Keeping();
        await using var chat = await ChatHarness.Connect(_server.Settings("#tags") with { Nick = "tagbot" }, listener);
        await using var stranger = await Viewer.Join(_server, "#tags", "Stranger");
        await using var member = await Viewer.Join(_server, "#tags", "member", Sasl);
        await using var program = await Viewer.Join(_server, "#tags", "otherbot");
        await program.Send("MODE otherbot +B");
        await program.Sees(message => message.Command == "MODE");
        await program.Say("hint from a program");
        chat.Out.Say("my own words");
        await stranger.Hears("tagbot");
        await stranger.Say("one");
        await chat.Until(() => listener.Lines.Count == 1);
        await member.Say("two");
        await chat.Until(() => listener.Lines.Count == 2);

        Assert.Equal(["one", "two"], listener.Lines.Select(line => line.Text));
        Assert.Equal(["nick stranger", "account jilles"], listener.Lines.Select(line => line.UserId));
        Assert.Equal(["Stranger", "member"], listener.Lines.Select(line => line.DisplayName));
        Assert.All(listener.Lines, line => Assert.NotNull(line.SentAt));
        Assert.Equal(2, listener.Lines.Select(line => line.MessageId).Where(id => id is not null).Distinct().Count());
    }

    [Fact]
    public async Task What_it_says_reaches_others_uncut_however_long_and_in_whatever_letters()
    {
        await using var reader = await Viewer.Join(_server, "#long", "reader");
        await using var chat = await ChatHarness.Connect(_server.Settings("#long") with { Nick = "longbot" });
        var text = string.Join(' ', Enumerable.Range(0, 120).Select(number => $"{number}é中😀"));
        chat.Out.Say(text);

        List<IrcMessage> heard = [];
        while (heard.Sum(message => message.Last.Length + 1) < text.Length + 1)
            heard.Add(await reader.Sees(message => message.Source?.Nick == "longbot" && message.Command == "PRIVMSG"));
        Assert.Equal(text, string.Join(' ', heard.Select(message => message.Last)));
        Assert.All(heard, message => Assert.InRange(LineBudget.Octets($"{message}\r\n"), 1, 512));
        Assert.InRange(LineBudget.Octets(heard[0].ToString()), 490, 510); // and no room is wasted
    }

    private sealed class Keeping : IChatListener
    {
        public List<ChatLine> Lines { get; } = [];

        public ValueTask<ImmutableArray<string>> Hear(ChatLine line, CancellationToken stop)
        {
            Lines.Add(line);
            return new([]);
        }
    }
}
