using System.Net;
using System.Net.WebSockets;
using Companion.Server.Access;
using Companion.Server.Tests.Running;

namespace Companion.Server.Tests.Access;

/// <summary>What is told to callers who are not let in, by what is wrong with them.</summary>
public sealed class StrangerTests(CompanionFixture fixture) : IClassFixture<CompanionFixture>
{
    private readonly RunningCompanion _companion = fixture.Companion;

    public static TheoryData<string, string, string?, string?, HttpStatusCode, string> Strangers => new()
    {
        // method, path, Host, Origin ("own" stands for the address), status, sentence
        { "GET", "/", "companion.example", null, HttpStatusCode.BadRequest, Sentences.ForeignHost },
        { "GET", "/presenter", "192.168.0.7:5170", null, HttpStatusCode.BadRequest, Sentences.ForeignHost },
        { "POST", "/enter", "companion.example", "own", HttpStatusCode.BadRequest, Sentences.ForeignHost },
        { "POST", "/hubs/desk/negotiate?negotiateVersion=1", "companion.example", "http://companion.example", HttpStatusCode.BadRequest, Sentences.ForeignHost },
        { "POST", "/enter", null, null, HttpStatusCode.Forbidden, Sentences.ForeignOrigin },
        { "POST", "/enter", null, "null", HttpStatusCode.Forbidden, Sentences.ForeignOrigin },
        { "POST", "/enter", null, "http://evil.example", HttpStatusCode.Forbidden, Sentences.ForeignOrigin },
        { "POST", "/enter", null, "http://localhost:1", HttpStatusCode.Forbidden, Sentences.ForeignOrigin },
        { "POST", "/chat/messages", null, "http://evil.example", HttpStatusCode.Forbidden, Sentences.ForeignOrigin },
        { "POST", "/chat/messages/more", null, null, HttpStatusCode.Forbidden, Sentences.ForeignOrigin },
        { "DELETE", "/anything", null, null, HttpStatusCode.Forbidden, Sentences.ForeignOrigin },
        { "POST", "/hubs/desk/negotiate?negotiateVersion=1", null, null, HttpStatusCode.Forbidden, Sentences.ForeignOrigin },
        { "POST", "/hubs/overlay/negotiate?negotiateVersion=1", null, "http://evil.example", HttpStatusCode.Forbidden, Sentences.ForeignOrigin },
        { "GET", "/hubs/audience", null, null, HttpStatusCode.Forbidden, Sentences.ForeignOrigin },
        { "POST", "/hubs/desk/negotiate?negotiateVersion=1", null, "own", HttpStatusCode.Unauthorized, Sentences.NoKey },
        { "POST", "/hubs/presenter/negotiate?negotiateVersion=1", null, "own", HttpStatusCode.Unauthorized, Sentences.NoKey },
    };

    [Theory]
    [MemberData(nameof(Strangers))]
    public async Task A_stranger_is_told_one_plain_sentence(
        string method, string path, string? host, string? origin, HttpStatusCode status, string sentence)
    {
        using var browser = new HttpClient { BaseAddress = _companion.Address };
        using var request = new HttpRequestMessage(new(method), new Uri(path, UriKind.Relative));
        request.Headers.Host = host;
        if (origin is not null)
            request.Headers.Add("Origin", origin == "own" ? Own : origin);
        using var answer = await browser.SendAsync(request, TestContext.Current.CancellationToken);

        Assert.Equal(status, answer.StatusCode);
        Assert.Equal("text/plain", answer.Content.Headers.ContentType?.MediaType);
        Assert.Equal(sentence, await answer.Content.ReadAsStringAsync(TestContext.Current.CancellationToken));
    }

    [Theory]
    [InlineData("own", "localhost", true)]
    [InlineData("http://evil.example", null, false)]
    [InlineData(null, null, false)]
    public async Task A_socket_opens_for_our_own_pages_only(string? origin, string? host, bool opens)
    {
        using var socket = new ClientWebSocket();
        socket.Options.SetRequestHeader("Authorization", $"Bearer {_companion.Keys[AccessRole.Presenter].Reveal()}");
        var authority = host is null ? _companion.Address.Authority : $"{host}:{_companion.Address.Port}";
        socket.Options.SetRequestHeader("Host", authority);
        if (origin is not null)
            socket.Options.SetRequestHeader("Origin", origin == "own" ? $"http://{authority}" : origin);
        var connecting = socket.ConnectAsync(
            new UriBuilder(_companion.Address) { Scheme = "ws", Path = HubPaths.Presenter }.Uri, TestContext.Current.CancellationToken);

        if (opens)
            await connecting;
        else
            await Assert.ThrowsAsync<WebSocketException>(() => connecting);
    }

    public static TheoryData<string, AccessRole, HttpStatusCode> HubsAndRoles
    {
        get
        {
            var table = new TheoryData<string, AccessRole, HttpStatusCode>();
            foreach (var hub in HubPaths.Each)
            {
                foreach (var role in Enum.GetValues<AccessRole>())
                    table.Add(hub, role, HubPaths.Of(role) == hub ? HttpStatusCode.OK : HttpStatusCode.Forbidden);
            }

            return table;
        }
    }

    [Theory]
    [MemberData(nameof(HubsAndRoles))]
    public async Task A_key_opens_its_own_hub_and_no_other(string hub, AccessRole role, HttpStatusCode status)
    {
        using var browser = _companion.Browser();
        browser.DefaultRequestHeaders.Authorization = new("Bearer", _companion.Keys[role].Reveal());
        using var answer = await browser.PostAsync(
            new Uri($"{hub}/negotiate?negotiateVersion=1", UriKind.Relative), null, TestContext.Current.CancellationToken);

        Assert.Equal(status, answer.StatusCode);
        if (status == HttpStatusCode.Forbidden)
            Assert.Equal(Sentences.OtherKey, await answer.Content.ReadAsStringAsync(TestContext.Current.CancellationToken));
    }

    private string Own => _companion.Address.GetLeftPart(UriPartial.Authority);
}
