using Companion.Server.Tests.Running;
using Microsoft.Extensions.FileProviders;

namespace Companion.Server.Tests.Access;

public sealed class HeaderTests(HeaderTests.TwoFiles fixture) : IClassFixture<HeaderTests.TwoFiles>
{

    [Theory]
    [InlineData("/")]
    [InlineData("/presenter")]
    [InlineData("/desk")]
    [InlineData("/stage")] // not built here: the refusal carries them too
    [InlineData("/assets/presenter-1a2b3c.js")]
    [InlineData("/nothing-here")]
    public async Task Every_answer_forbids_all_that_the_pages_do_not_need(string path)
    {
        using var answer = await Get(path);

        var policy = Assert.Single(answer.Headers.GetValues("Content-Security-Policy")).Split("; ");
        Assert.Contains("default-src 'none'", policy);
        Assert.Contains("frame-ancestors 'none'", policy);
        Assert.Contains("base-uri 'none'", policy);
        Assert.Contains("form-action 'none'", policy);
        Assert.All(policy, part => Assert.Matches("^[a-z-]+ '(none|self)'$", part));
        Assert.Equal("no-referrer", Assert.Single(answer.Headers.GetValues("Referrer-Policy")));
        Assert.Equal("nosniff", Assert.Single(answer.Headers.GetValues("X-Content-Type-Options")));
        Assert.False(answer.Headers.Contains("Server"));
    }

    [Theory]
    [InlineData("/presenter", "display-capture=(self)")]
    [InlineData("/presenter.html", "display-capture=()")]
    [InlineData("/desk", "display-capture=()")]
    [InlineData("/stage", "display-capture=()")]
    [InlineData("/", "display-capture=()")]
    public async Task The_presenters_page_alone_may_ask_for_the_screen(string path, string policy)
    {
        using var answer = await Get(path);

        Assert.Equal(policy, Assert.Single(answer.Headers.GetValues("Permissions-Policy")));
    }

    [Theory]
    [InlineData("/")]
    [InlineData("/presenter")]
    [InlineData("/presenter.html")]
    public async Task A_page_is_never_kept(string path)
    {
        using var answer = await Get(path);

        Assert.Equal("text/html", answer.Content.Headers.ContentType?.MediaType);
        Assert.True(answer.Headers.CacheControl?.NoStore);
    }

    [Fact]
    public async Task A_file_with_a_hash_in_its_name_is_kept_for_ever()
    {
        using var answer = await Get("/assets/presenter-1a2b3c.js");

        Assert.Equal("public, max-age=31536000, immutable", answer.Headers.CacheControl?.ToString());
    }

    [Fact]
    public async Task The_index_names_the_pages_without_their_keys()
    {
        using var answer = await Get("/");
        var html = await answer.Content.ReadAsStringAsync(TestContext.Current.CancellationToken);

        Assert.All(["/presenter", "/desk", "/overlay", "/stage"], page => Assert.Contains(page, html, StringComparison.Ordinal));
        Assert.DoesNotContain("#k=", html, StringComparison.Ordinal);
    }

    private async Task<HttpResponseMessage> Get(string path)
    {
        using var browser = fixture.Companion.Browser();
        return await browser.GetAsync(new Uri(path, UriKind.Relative), TestContext.Current.CancellationToken);
    }

    /// <summary>A server whose built pages are one page and one script.</summary>
    public sealed class TwoFiles : IAsyncLifetime
    {
        private readonly TemporaryFolder _pages = new();
        private PhysicalFileProvider _files = null!;

        internal RunningCompanion Companion { get; private set; } = null!;

        public async ValueTask InitializeAsync()
        {
            Directory.CreateDirectory(_pages.In("assets"));
            await File.WriteAllTextAsync(_pages.In("presenter.html"), "<!doctype html><title>panel</title>");
            await File.WriteAllTextAsync(_pages.In("assets", "presenter-1a2b3c.js"), "export {};");
            _files = new(_pages.Path);
            Companion = await RunningCompanion.Start(adjust: builder => builder.Environment.WebRootFileProvider = _files);
        }

        public async ValueTask DisposeAsync()
        {
            await Companion.DisposeAsync();
            _files.Dispose();
            _pages.Dispose();
        }
    }
}
