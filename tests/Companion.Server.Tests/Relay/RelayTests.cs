using System.Collections.Concurrent;
using System.Net;
using System.Text.Json;
using Companion.Server.Access;
using Companion.Server.Live.Audience;
using StackExchange.Redis;

namespace Companion.Server.Tests.Relay;

/// <summary>Audience servers that follow the presenter's: three processes and a real Redis server.</summary>
public sealed class RelayTests(ShowFixture fixture) : IClassFixture<ShowFixture>
{
    private static readonly string Someone = new('A', 22);
    private static readonly string SomeoneElse = new('Q', 22);

    // Who has been answered waits before the next answer, whichever test comes first.
    private static readonly string AnotherOne = new('w', 22);

    private readonly Show _show = fixture.Show;

    [Fact]
    public async Task An_entry_reaches_the_viewers_of_every_server()
    {
        await using var panel = await _show.OpenPanel();
        await using var own = await _show.OpenViewer(_show.Presenter);
        await using var first = await _show.OpenViewer(_show.AudienceServers[0]);
        await using var second = await _show.OpenViewer(_show.AudienceServers[1]);

        await panel.Do("PlaceDigit", "r1c1", 4);
        foreach (var viewer in new[] { own, first, second })
            await viewer.Sees("Board", view => Placed(view, 0) == '4');

        await panel.Do("Undo");
        foreach (var viewer in new[] { own, first, second })
            await viewer.Sees("Board", view => Placed(view, 0) == '.');
    }

    [Fact]
    public async Task An_answer_comes_back_to_the_viewer_who_asked_and_to_no_other()
    {
        await using var asking = await _show.OpenViewer(_show.AudienceServers[0], Someone);
        await using var beside = await _show.OpenViewer(_show.AudienceServers[0], SomeoneElse);
        await using var elsewhere = await _show.OpenViewer(_show.AudienceServers[1]);

        var answer = await asking.Ask<JsonElement>("Hint", null, null);

        Assert.Equal("Look at block 1", Assert.Single(answer.GetProperty("words").EnumerateArray()).GetString());
        Assert.Equal("house", answer.GetProperty("picture").GetProperty("shapes")[0].GetProperty("kind").GetString());
        Assert.All(beside.Told.Concat(elsewhere.Told), told => Assert.Equal("Board", told.Name));
    }

    [Fact]
    public async Task A_call_is_counted_once_by_whichever_server_it_comes()
    {
        await using var panel = await _show.OpenPanel();
        await using var first = await _show.OpenViewer(_show.AudienceServers[0], Someone);
        await using var second = await _show.OpenViewer(_show.AudienceServers[1], SomeoneElse);
        await using var again = await _show.OpenViewer(_show.AudienceServers[1], Someone); // the same page, come back elsewhere

        foreach (var viewer in new[] { first, second, again })
            Assert.Equal("counted", (await viewer.Ask<JsonElement>("Call", "r2c2", 6)).GetProperty("kind").GetString());

        var counted = await panel.Sees("Viewers", view => Calls(view) is { } calls && calls.GetProperty("viewers").GetInt32() >= 2);
        Assert.Equal(2, Calls(counted)!.Value.GetProperty("viewers").GetInt32());
        Assert.Equal(2, Calls(counted)!.Value.GetProperty("right").GetInt32());
    }

    [Fact]
    public async Task An_audience_server_lets_in_who_has_the_audiences_key_and_opens_nothing_else()
    {
        var server = _show.AudienceServers[0];
        await using (await _show.OpenViewer(server))
        {
        }

        Assert.Equal((401, AudienceSentences.ByLink), await Show.Knock(server, null));
        foreach (var role in new[] { AccessRole.Presenter, AccessRole.CoHost, AccessRole.Overlay })
            Assert.Equal((401, AudienceSentences.ByLink), await Show.Knock(server, _show.Key(role)));

        using var browser = new HttpClient { BaseAddress = server.Address };
        browser.DefaultRequestHeaders.Add("Origin", server.Address.GetLeftPart(UriPartial.Authority));
        browser.DefaultRequestHeaders.Authorization = new("Bearer", _show.Key(AccessRole.Presenter));
        foreach (var path in new[] { "/presenter", "/presenter.html", "/desk", "/overlay", "/stage", HubPaths.Presenter, HubPaths.Desk, HubPaths.Overlay, ToolPaths.ChatMessages })
        {
            using var answer = await browser.GetAsync(new Uri(path, UriKind.Relative), TestContext.Current.CancellationToken);
            Assert.Equal(HttpStatusCode.NotFound, answer.StatusCode);
        }
    }

    [Fact]
    public async Task What_passes_through_Redis_is_what_viewers_may_know_under_our_prefix()
    {
        ConcurrentQueue<(string Channel, string Text)> passed = [];
        await using var redis = await ConnectionMultiplexer.ConnectAsync(_show.Redis.Connection);
        await redis.GetSubscriber().SubscribeAsync(
            RedisChannel.Pattern("*"), (channel, text) => passed.Enqueue((channel.ToString(), System.Text.Encoding.Latin1.GetString(text!))));
        await using var panel = await _show.OpenPanel();
        await using var viewer = await _show.OpenViewer(_show.AudienceServers[0], AnotherOne);

        await panel.Do("PlaceDigit", "r1c1", 4);
        await viewer.Sees("Board", view => Placed(view, 0) == '4');
        await viewer.Ask<JsonElement>("Hint", null, null);
        await panel.Do("Undo");
        await viewer.Sees("Board", view => Placed(view, 0) == '.');

        var ours = passed.Where(message => !message.Channel.StartsWith("__", StringComparison.Ordinal)).ToList();
        Assert.NotEmpty(ours);
        Assert.All(ours, message => Assert.StartsWith("companion:", message.Channel, StringComparison.Ordinal));
        Assert.All(Enum.GetValues<AccessRole>(), role => Assert.DoesNotContain(ours, message => message.Text.Contains(_show.Key(role), StringComparison.Ordinal)));
        Assert.DoesNotContain(ours, message => message.Channel.Contains("DeskHub", StringComparison.Ordinal) || message.Channel.Contains("OverlayHub", StringComparison.Ordinal));
    }

    private static char? Placed(JsonElement view, int cell) => view.GetProperty("board") is { ValueKind: JsonValueKind.Object } board
        ? board.GetProperty("placed").GetString()![cell]
        : null;

    private static JsonElement? Calls(JsonElement view) =>
        view.GetProperty("calls").EnumerateArray().Cast<JsonElement?>().FirstOrDefault(call => call!.Value.GetProperty("cell").GetString() == "r2c2");
}
