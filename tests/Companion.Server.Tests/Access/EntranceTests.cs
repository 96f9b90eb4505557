using System.Net;
using System.Net.Http.Json;
using Companion.Server.Access;
using Companion.Server.Tests.Running;

namespace Companion.Server.Tests.Access;

public sealed class EntranceTests : IAsyncLifetime
{
    private RunningCompanion _companion = null!;
    private HttpClient _browser = null!;

    public async ValueTask InitializeAsync()
    {
        _companion = await RunningCompanion.Start();
        _browser = _companion.Browser();
    }

    [Theory]
    [InlineData(AccessRole.Presenter, "presenter")]
    [InlineData(AccessRole.CoHost, "desk")]
    [InlineData(AccessRole.Overlay, "overlay")]
    [InlineData(AccessRole.Viewer, "audience")]
    public async Task A_good_key_becomes_a_cookie_that_only_its_hub_is_sent(AccessRole role, string hub)
    {
        var key = _companion.Keys[role].Reveal();
        using var answer = await Enter(new { key });

        Assert.Equal(HttpStatusCode.NoContent, answer.StatusCode);
        Assert.Equal(
            $"companion-{hub}-{_companion.Address.Port}={key}; path=/hubs/{hub}; samesite=strict; httponly",
            Assert.Single(answer.Headers.GetValues("Set-Cookie")));
    }

    [Fact]
    public async Task The_cookie_opens_its_hub_and_no_other()
    {
        using var entered = await Enter(new { key = _companion.Keys[AccessRole.Overlay].Reveal() });

        Assert.Equal(HttpStatusCode.OK, await Negotiate(HubPaths.Overlay));
        Assert.Equal(HttpStatusCode.Unauthorized, await Negotiate(HubPaths.Desk));
    }

    [Fact]
    public async Task The_presenters_page_and_a_co_hosts_page_keep_their_keys_apart_in_one_browser()
    {
        foreach (var role in new[] { AccessRole.Presenter, AccessRole.CoHost, AccessRole.Presenter })
        {
            using var entered = await Enter(new { key = _companion.Keys[role].Reveal(), hub = HubPaths.Of(role) });
            Assert.Equal(HttpStatusCode.NoContent, entered.StatusCode);
        }

        Assert.Equal(HttpStatusCode.OK, await Negotiate(HubPaths.Desk));
        Assert.Equal(HttpStatusCode.OK, await Negotiate(HubPaths.Presenter));
    }

    [Fact]
    public async Task A_key_of_another_page_is_refused_at_once_and_opens_nothing()
    {
        using var answer = await Enter(new { key = _companion.Keys[AccessRole.Presenter].Reveal(), hub = HubPaths.Desk });

        Assert.Equal(HttpStatusCode.Forbidden, answer.StatusCode);
        await IsPlain(Sentences.OtherKey, answer);
        Assert.False(answer.Headers.Contains("Set-Cookie"));
    }

    [Theory]
    [InlineData("https://companion.example", true)]
    [InlineData("http://companion.example", false)]
    public async Task Behind_a_proxy_that_ends_tls_the_cookie_is_still_sent_by_tls_alone(string origin, bool isSecure)
    {
        await using var companion = await RunningCompanion.Start(settings: new() { Port = 0, Hosts = ["companion.example"] });
        using var browser = new HttpClient { BaseAddress = companion.Address };
        browser.DefaultRequestHeaders.Host = "companion.example";
        browser.DefaultRequestHeaders.Add("Origin", origin);
        using var answer = await browser.PostAsJsonAsync(
            new Uri(Entrance.Path, UriKind.Relative), new { key = companion.Keys[AccessRole.CoHost].Reveal() }, Stop);

        Assert.Equal(isSecure, Assert.Single(answer.Headers.GetValues("Set-Cookie")).Contains("; secure;", StringComparison.Ordinal));
    }

    [Theory]
    [InlineData("{\"key\":\"AAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAA\"}")]
    [InlineData("{\"key\":\"presenter\"}")]
    [InlineData("{\"key\":7}")]
    [InlineData("{\"key\":null}")]
    [InlineData("{}")]
    [InlineData("not JSON")]
    [InlineData("")]
    public async Task An_unknown_key_is_refused_in_one_plain_sentence(string body)
    {
        using var content = new StringContent(body, System.Text.Encoding.UTF8, "application/json");
        using var answer = await _browser.PostAsync(new Uri(Entrance.Path, UriKind.Relative), content, Stop);

        Assert.Equal(HttpStatusCode.Forbidden, answer.StatusCode);
        await IsPlain(Sentences.UnknownKey, answer);
        Assert.False(answer.Headers.Contains("Set-Cookie"));
    }

    [Fact]
    public async Task Who_tries_many_keys_must_wait()
    {
        var answers = new List<HttpResponseMessage>();
        for (var tries = 0; tries < 100; tries++)
            answers.Add(await Enter(new { key = "guess" }));

        var refused = answers.First(answer => answer.StatusCode == HttpStatusCode.TooManyRequests);
        await IsPlain(Sentences.TooManyKeys, refused);
        Assert.NotNull(refused.Headers.RetryAfter);
        answers.ForEach(answer => answer.Dispose());
    }

    public async ValueTask DisposeAsync()
    {
        _browser.Dispose();
        await _companion.DisposeAsync();
    }

    private static CancellationToken Stop => TestContext.Current.CancellationToken;

    private Task<HttpResponseMessage> Enter(object body) =>
        _browser.PostAsJsonAsync(new Uri(Entrance.Path, UriKind.Relative), body, Stop);

    private async Task<HttpStatusCode> Negotiate(string hub)
    {
        using var answer = await _browser.PostAsync(new Uri($"{hub}/negotiate?negotiateVersion=1", UriKind.Relative), null, Stop);
        return answer.StatusCode;
    }

    private static async Task IsPlain(string sentence, HttpResponseMessage answer)
    {
        Assert.Equal("text/plain", answer.Content.Headers.ContentType?.MediaType);
        Assert.Equal(sentence, await answer.Content.ReadAsStringAsync(Stop));
    }
}
