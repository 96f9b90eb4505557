using System.Net;
using System.Net.Http.Json;
using System.Net.WebSockets;
using Companion.Server.Access;
using Companion.Server.Tests.Running;

namespace Companion.Server.Tests.Access;

/// <summary>
/// Use from another machine: a caller that reaches the companion by a name and an address that are not localhost's, and trusts its
/// certificate alone.
/// </summary>
public sealed class OtherMachineTests(OtherMachineTests.OpenToOthers fixture) : IClassFixture<OtherMachineTests.OpenToOthers>
{
    private readonly RunningCompanion _companion = fixture.Companion;

    [Fact]
    public async Task A_co_hosts_key_is_changed_by_tls_into_a_cookie_that_is_sent_by_tls_alone()
    {
        using var browser = Browser(Own);
        using var answer = await Enter(browser, AccessRole.CoHost);

        Assert.Equal(HttpStatusCode.NoContent, answer.StatusCode);
        var port = _companion.AddressForOthers.Port;
        Assert.Equal(
            $"companion-desk-{port}={_companion.Keys[AccessRole.CoHost].Reveal()}; path=/hubs/desk; secure; samesite=strict; httponly",
            Assert.Single(answer.Headers.GetValues("Set-Cookie")));
    }

    [Theory]
    [InlineData("studio.example", null, HttpStatusCode.NoContent)]
    [InlineData("127.0.0.2", null, HttpStatusCode.NoContent)]
    [InlineData("other.example", null, HttpStatusCode.BadRequest)]
    [InlineData("192.168.0.7", null, HttpStatusCode.BadRequest)]
    [InlineData("studio.example", "https://other.example", HttpStatusCode.Forbidden)]
    [InlineData("studio.example", "https://studio.example:1", HttpStatusCode.Forbidden)]
    public async Task Hosts_and_origins_are_looked_at_as_on_this_machine(string host, string? origin, HttpStatusCode status)
    {
        var authority = $"{host}:{_companion.AddressForOthers.Port}";
        using var browser = Browser(origin ?? $"https://{authority}", isCareless: true);
        browser.DefaultRequestHeaders.Host = authority;
        using var answer = await Enter(browser, AccessRole.CoHost);

        Assert.Equal(status, answer.StatusCode);
    }

    [Fact]
    public async Task The_audiences_link_opens_the_audiences_page_there_and_nothing_else()
    {
        await using var presenter = await _companion.OpenDesk();
        await presenter.Do("AudienceLink");
        var link = new Uri((await presenter.Sees("AudienceLink", _ => true)).GetString()!);
        Assert.Equal($"{Own}/audience", link.GetLeftPart(UriPartial.Path));
        var key = link.Fragment["#k=".Length..];
        using var browser = Browser(Own);
        using var entered = await browser.PostAsJsonAsync(
            new Uri(Entrance.Path, UriKind.Relative), new { key, hub = HubPaths.Audience }, Stop);
        Assert.Contains("path=/hubs/audience; secure;", Assert.Single(entered.Headers.GetValues("Set-Cookie")), StringComparison.Ordinal);

        browser.DefaultRequestHeaders.Authorization = new("Bearer", key);
        foreach (var hub in HubPaths.Each)
        {
            using var answer = await browser.PostAsync(new Uri($"{hub}/negotiate?negotiateVersion=1", UriKind.Relative), null, Stop);
            Assert.Equal(hub == HubPaths.Audience ? HttpStatusCode.OK : HttpStatusCode.Forbidden, answer.StatusCode);
        }
    }

    [Theory]
    [InlineData("own", true)]
    [InlineData("https://other.example", false)]
    public async Task A_co_hosts_panel_connects_from_there(string origin, bool opens)
    {
        using var browser = Browser(Own);
        using var entered = await Enter(browser, AccessRole.CoHost);
        using var socket = new ClientWebSocket();
        socket.Options.SetRequestHeader("Origin", origin == "own" ? Own : origin);
        socket.Options.SetRequestHeader("Cookie", entered.Headers.GetValues("Set-Cookie").Single().Split(';')[0]);
        using var invoker = new HttpMessageInvoker(fixture.Certificate.Trusting(_companion.AddressForOthers.Port));
        var connecting = socket.ConnectAsync(new Uri($"{Own.Replace("https", "wss", StringComparison.Ordinal)}{HubPaths.Desk}"), invoker, Stop);

        if (opens)
            await connecting;
        else
            await Assert.ThrowsAsync<WebSocketException>(() => connecting);
    }

    [Fact]
    public async Task Nobody_is_answered_there_without_tls()
    {
        using var browser = new HttpClient();
        await Assert.ThrowsAsync<HttpRequestException>(() => browser.GetAsync(
            new UriBuilder(_companion.AddressForOthers) { Scheme = "http" }.Uri, Stop));
    }

    [Fact]
    public async Task On_this_machine_nothing_changes()
    {
        await using var presenter = await _companion.OpenDesk();
        await presenter.Sees("Desk", _ => true);
        Assert.True(IPAddress.IsLoopback(IPAddress.Parse(_companion.Address.Host)));
    }

    private static CancellationToken Stop => TestContext.Current.CancellationToken;

    private string Own => $"https://{TestCertificate.Name}:{_companion.AddressForOthers.Port}";

    private HttpClient Browser(string origin, bool isCareless = false)
    {
        var browser = new HttpClient(fixture.Certificate.Trusting(_companion.AddressForOthers.Port, isCareless)) { BaseAddress = new(Own) };
        browser.DefaultRequestHeaders.Add("Origin", origin);
        return browser;
    }

    private Task<HttpResponseMessage> Enter(HttpClient browser, AccessRole role) => browser.PostAsJsonAsync(
        new Uri(Entrance.Path, UriKind.Relative), new { key = _companion.Keys[role].Reveal(), hub = HubPaths.Of(role) }, Stop);

    /// <summary>A server that other machines reach at a name and an address of their own.</summary>
    public sealed class OpenToOthers : IAsyncLifetime
    {
        private readonly TemporaryFolder _folder = new();

        internal TestCertificate Certificate { get; } = new();

        internal RunningCompanion Companion { get; private set; } = null!;

        public async ValueTask InitializeAsync()
        {
            await CertificateFile.WriteSecret(_folder.In("studio.pem"), Certificate.Pem + "\n" + Certificate.KeyPem);
            Companion = await RunningCompanion.Start(_folder.Path, settings: new()
            {
                Port = 0,
                Hosts = [TestCertificate.Name],
                Listen = TestCertificate.Address.ToString(),
                Tls = new() { Port = 0, Certificate = "studio.pem" },
            });
        }

        public async ValueTask DisposeAsync()
        {
            await Companion.DisposeAsync();
            _folder.Dispose();
            Certificate.Dispose();
        }
    }
}
