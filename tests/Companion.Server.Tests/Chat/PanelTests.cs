using Companion.Server.Access;
using Companion.Server.Chat;
using Companion.Server.Tests.Chat.Servers;
using Companion.Server.Tests.Running;
using Microsoft.Extensions.DependencyInjection;

namespace Companion.Server.Tests.Chat;

/// <summary>The chat in the whole server.</summary>
public sealed class PanelTests(NgircdFixture fixture) : IClassFixture<NgircdFixture>
{
    private readonly Ngircd _server = fixture.Server;

    [Fact]
    public async Task The_panel_says_how_the_chat_is_doing_and_no_name_stands_in_a_log()
    {
        using var folder = new TemporaryFolder();
        await using (var companion = await RunningCompanion.Start(
            folder.Path,
            builder => builder.Services.AddSingleton<IChatListener>(new Echo()),
            new() { Port = 0, Chat = new() { Irc = _server.Settings("#panel") with { Nick = "panelbot" } } }))
        {
            await using var desk = await companion.OpenDesk();
            var connected = await desk.Sees("Desk", view => Phase(view) == "connected");
            Assert.Equal("The chat is connected: #panel on 127.0.0.1.", connected.GetProperty("chat").GetProperty("text").GetString());

            await using var viewer = await Viewer.Join(_server, "#panel", "secretive");
            await viewer.Say("hint");
            Assert.Equal("secretive: hint", await viewer.Hears("panelbot"));

            // The session goes on whatever becomes of the chat.
            await _server.Stop();
            await desk.Sees("Desk", view => Phase(view) == "connecting");
            await desk.Do("AllowCoHostOnAir", true);
            await _server.Start();
        }

        Assert.All(
            Directory.GetFiles(folder.Path, "*", SearchOption.AllDirectories),
            file => Assert.DoesNotContain("secretive", File.ReadAllText(file), StringComparison.OrdinalIgnoreCase));
    }

    [Fact]
    public async Task Without_a_chat_the_panel_says_nothing_of_it()
    {
        await using var companion = await RunningCompanion.Start();
        await using var desk = await companion.OpenDesk(AccessRole.CoHost);

        Assert.Equal(System.Text.Json.JsonValueKind.Null, (await desk.Sees("Desk", 1)).GetProperty("chat").ValueKind);
    }

    private static string? Phase(System.Text.Json.JsonElement view) =>
        view.GetProperty("chat") is { ValueKind: System.Text.Json.JsonValueKind.Object } chat ? chat.GetProperty("phase").GetString() : null;
}
