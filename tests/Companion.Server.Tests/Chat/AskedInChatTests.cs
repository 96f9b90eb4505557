using System.Text.Json;
using Companion.Server.Settings;
using Companion.Server.Tests.Chat.Servers;
using Companion.Server.Tests.Chat.Webhook;
using Companion.Server.Tests.Running;

namespace Companion.Server.Tests.Chat;

/// <summary>The whole way of a viewer's question, in a real chat and back.</summary>
public sealed class AskedInChatTests(NgircdFixture fixture) : IClassFixture<NgircdFixture>
{
    private readonly Ngircd _server = fixture.Server;

    [Fact]
    public async Task A_viewer_who_asks_in_a_chat_is_answered_there()
    {
        await using var companion = await RunningCompanion.Start(settings: Settings with
        {
            Chat = new() { Irc = _server.Settings("#ask") with { Nick = "askbot" } },
        });
        await using var desk = await companion.OpenDesk();
        await desk.Sees("Desk", view => view.GetProperty("chat").ToString().Contains("is connected", StringComparison.Ordinal));
        await using var viewer = await Viewer.Join(_server, "#ask", "curious");
        await viewer.Say("what a puzzle");
        await viewer.Say("!hint");

        Assert.StartsWith("@curious: Look at ", await viewer.Hears("askbot"), StringComparison.Ordinal);
    }

    [Fact]
    public async Task A_program_that_posts_a_viewers_question_is_told_the_answer()
    {
        using var folder = new TemporaryFolder();
        await using var companion = await WebhookFixture.Start(folder.Path, Settings);
        using var program = new SigningProgram();
        using var answered = await program.Post(companion.Address, """{ "userId": "42", "name": "Ana", "text": "!hint" }""");

        using var answer = JsonDocument.Parse(await answered.Content.ReadAsStringAsync(TestContext.Current.CancellationToken));
        var line = Assert.Single(answer.RootElement.GetProperty("answers").EnumerateArray()).GetString();
        Assert.StartsWith("@Ana: Look at ", line, StringComparison.Ordinal);
    }

    private static ServerSettings Settings => new() { Port = 0, Asks = new() { DelaySeconds = 0, GatherSeconds = 0 } };
}
