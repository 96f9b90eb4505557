using System.Text.Json;
using Deque.AxeCore.Playwright;
using Microsoft.Playwright;

namespace Companion.Browser.Tests;

/// <summary>The page for viewers: by keys, by touch, at the sizes of phones and of zoomed windows.</summary>
public sealed class AudienceTests(Chromium chromium) : IAsyncLifetime
{
    private static readonly string Settings = JsonSerializer.Serialize(new { asks = new { delaySeconds = 0, viewerPauseSeconds = 0 } });

    private CompanionProcess _companion = null!;

    public async ValueTask InitializeAsync() => _companion = await CompanionProcess.StartAsync(Settings);

    public ValueTask DisposeAsync() => _companion.DisposeAsync();

    [Theory]
    [InlineData(ColorScheme.Light)]
    [InlineData(ColorScheme.Dark)]
    public async Task Axe_finds_no_serious_fault(ColorScheme scheme)
    {
        await using var context = await chromium.Browser.NewContextAsync(new() { ColorScheme = scheme, ReducedMotion = ReducedMotion.Reduce });
        var page = await OpenAsync(context);
        await AskAsync(page, "4 why");
        await Cell(page, "r1c3").ClickAsync();
        await Assertions.Expect(page.GetByText("I have found it", new() { Exact = true })).ToBeVisibleAsync();

        var result = await page.RunAxe();

        var serious = result.Violations.Where(violation => violation.Impact is "serious" or "critical")
            .Select(violation => $"{violation.Id}: {string.Join(", ", violation.Nodes.Select(node => node.Html))}");
        Assert.Empty(serious);
    }

    // A phone; a window of 1280 by 720 zoomed to 200 % and to 400 % (WCAG 2.2, 1.4.10: no scrolling both ways at 320 px); a screen.
    [Theory]
    [InlineData(390, 844)]
    [InlineData(640, 360)]
    [InlineData(320, 256)]
    [InlineData(1280, 720)]
    [InlineData(1920, 1080)]
    public async Task The_page_is_as_wide_as_its_window_and_its_buttons_are_large_enough_to_be_hit(int width, int height)
    {
        await using var context = await chromium.Browser.NewContextAsync(new() { ViewportSize = new() { Width = width, Height = height } });
        var page = await OpenAsync(context);
        await AskAsync(page, "1 where");
        await Cell(page, "r1c3").ClickAsync();

        var wide = await page.EvaluateAsync<int>("() => document.documentElement.scrollWidth - document.documentElement.clientWidth");
        var least = await page.EvaluateAsync<double>(
            "() => Math.min(...[...document.querySelectorAll('button, [role=gridcell]')].map(e => e.getBoundingClientRect()).flatMap(r => [r.width, r.height]))");

        Assert.Equal(0, wide);
        Assert.True(least >= 24, $"The smallest side of a target is {least} px (WCAG 2.2, 2.5.8).");
    }

    [Fact]
    public async Task By_keys_alone_a_viewer_reads_the_board_asks_and_calls()
    {
        await using var context = await chromium.Browser.NewContextAsync();
        var presenter = await PresenterPage.OpenAsync(context, _companion);
        var page = await OpenAsync(context);
        await Cell(page, "r1c1").FocusAsync();
        await page.Keyboard.PressAsync("ArrowRight");
        await page.Keyboard.PressAsync("ArrowRight");
        await Assertions.Expect(page.Locator(":focus")).ToHaveAttributeAsync("aria-label", "r1c3, open");
        await page.Keyboard.PressAsync("Enter");
        await Assertions.Expect(page.GetByRole(AriaRole.Heading, new() { Name = "A hint that touches r1c3" })).ToBeVisibleAsync();

        await page.Keyboard.PressAsync("Tab");
        await page.Keyboard.PressAsync("Enter");
        await Assertions.Expect(page.Locator(".answer [aria-live=polite]")).ToContainTextAsync("Look at");
        await Assertions.Expect(page.Locator(".audience-board .house")).ToHaveCountAsync(1);

        await page.GetByRole(AriaRole.Button, new() { Name = "I have found r1c3: it is 3" }).FocusAsync();
        await page.Keyboard.PressAsync("Enter");
        await Assertions.Expect(page.Locator(".answer [aria-live=polite]")).ToContainTextAsync("Counted");

        await presenter.Page.BringToFrontAsync();
        await presenter.PressAsync("h");
        await Assertions.Expect(presenter.Page.Locator(".call-counts text").First).ToHaveTextAsync("1");
        await presenter.PressAsync("f");
        await presenter.PressAsync("n");
        await Assertions.Expect(presenter.Page.Locator(".mirror .called")).ToHaveCountAsync(1);
    }

    [Fact]
    public async Task The_board_follows_the_presenter_and_goes_when_the_page_is_closed_and_comes_back()
    {
        await using var context = await chromium.Browser.NewContextAsync();
        var presenter = await PresenterPage.OpenAsync(context, _companion);
        var page = await OpenAsync(context);
        await presenter.Page.BringToFrontAsync();
        await presenter.TypeAsync("r3c2", "6");
        await Assertions.Expect(page.GetByRole(AriaRole.Gridcell, new() { Name = "r3c2, 6", Exact = true })).ToBeVisibleAsync();

        await presenter.PressAsync("v");
        await presenter.Page.GetByRole(AriaRole.Radio, new() { Name = "Closed" }).CheckAsync();
        await Assertions.Expect(page.GetByText("The presenter has closed this page for now.")).ToBeVisibleAsync();
        await Assertions.Expect(page.GetByRole(AriaRole.Gridcell)).ToHaveCountAsync(0);

        await presenter.Page.GetByRole(AriaRole.Radio, new() { Name = "Open to all" }).CheckAsync();
        await Assertions.Expect(page.GetByRole(AriaRole.Gridcell)).ToHaveCountAsync(81, new() { Timeout = 30_000 });
    }

    [Fact]
    public async Task Neither_page_shows_the_key_when_the_link_is_copied()
    {
        await using var context = await chromium.Browser.NewContextAsync(new() { Permissions = ["clipboard-read", "clipboard-write"] });
        var presenter = await PresenterPage.OpenAsync(context, _companion);
        await presenter.PressAsync("v");
        await presenter.Page.GetByRole(AriaRole.Button, new() { Name = "Copy audience link" }).ClickAsync();
        await Assertions.Expect(presenter.Page.GetByText("Copied")).ToBeVisibleAsync();

        var link = new Uri(await presenter.Page.EvaluateAsync<string>("() => navigator.clipboard.readText()"));
        Assert.Equal(_companion.Audience, link);
        var page = await OpenAsync(context);
        foreach (var each in new[] { presenter.Page, page })
        {
            Assert.DoesNotContain(link.Fragment["#k=".Length..], each.Url, StringComparison.Ordinal);
            Assert.DoesNotContain(link.Fragment["#k=".Length..], await each.ContentAsync(), StringComparison.Ordinal);
        }
    }

    private async Task<IPage> OpenAsync(IBrowserContext context)
    {
        var page = await context.NewPageAsync();
        await page.GotoAsync(_companion.Audience.ToString());
        await Assertions.Expect(page.GetByRole(AriaRole.Gridcell)).ToHaveCountAsync(81);
        return page;
    }

    private static async Task AskAsync(IPage page, string grade)
    {
        await page.GetByRole(AriaRole.Button, new() { Name = grade }).ClickAsync();
        await Assertions.Expect(page.Locator(".answer p").First).ToBeVisibleAsync();
    }

    private static ILocator Cell(IPage page, string name) =>
        page.GetByRole(AriaRole.Gridcell, new() { NameRegex = new($"^{name},") });
}
