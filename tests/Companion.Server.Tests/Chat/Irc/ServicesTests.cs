using Companion.Server.Chat;
using Companion.Server.Chat.Irc;
using Companion.Server.Tests.Chat.Servers;

namespace Companion.Server.Tests.Chat.Irc;

/// <summary>Against accounts as networks have them: services of another program, linked to the server.</summary>
public sealed class ServicesTests
{
    [Fact]
    public async Task It_signs_in_by_SASL_to_an_account_that_was_registered_with_services_and_with_no_other_password()
    {
        await using var server = new Inspircd();
        await server.Start();
        await using var services = await Atheme.Link(server, "gridbot", "sesame");
        await using var alice = await Viewer.Join(server, "#grid", "alice");

        await using var chat = await ChatHarness.Connect(server.Settings("#grid") with { Account = "gridbot" }, password: "sesame");
        await alice.Send("WHOIS hintbot");
        Assert.Equal("gridbot", (await alice.Sees(message => message.Command == "330"))[2]);
        await alice.Say("hint");
        Assert.Equal("alice: hint", await alice.Hears());

        await using var wrong = await ChatHarness.Start(server.Settings("#grid") with { Account = "gridbot", Nick = "wrongbot" }, password: "guess");
        Assert.Equal(new(ChatPhase.Stopped, $"The chat has stopped. {Reasons.WrongAccount}"), await wrong.Tells(ChatPhase.Stopped));
    }
}
