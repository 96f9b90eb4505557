using Deque.AxeCore.Playwright;
using Microsoft.Playwright;

namespace Companion.Browser.Tests;

/// <summary>The pages can be used by everybody, at the sizes of a broadcast, and show no key.</summary>
public sealed class AccessTests(Chromium chromium) : IAsyncLifetime
{
    private CompanionProcess _companion = null!;

    public async ValueTask InitializeAsync() => _companion = await CompanionProcess.StartAsync();

    public ValueTask DisposeAsync() => _companion.DisposeAsync();

    public static TheoryData<string, ColorScheme> EachPage =>
        new MatrixTheoryData<string, ColorScheme>(["presenter", "desk", "overlay", "stage"], [ColorScheme.Light, ColorScheme.Dark]);

    public static TheoryData<string, int, int> EachSize => new()
    {
        { "presenter", 1280, 720 },
        { "presenter", 1920, 1080 },
        { "desk", 1280, 720 },
        { "desk", 1920, 1080 },
        { "stage", 1280, 720 },
        { "stage", 1920, 1080 },
        { "stage", 720, 1280 },
        { "overlay", 800, 600 },
        { "overlay", 1920, 1080 },
    };

    [Theory]
    [MemberData(nameof(EachPage))]
    public async Task Axe_finds_no_serious_fault(string name, ColorScheme scheme)
    {
        await using var context = await chromium.Browser.NewContextAsync(new() { ColorScheme = scheme, ReducedMotion = ReducedMotion.Reduce });
        var page = await OpenAsync(context, name);
        await PutOnAirAsync(context, withCues: name is "presenter" or "desk");

        var result = await page.RunAxe();

        var serious = result.Violations.Where(violation => violation.Impact is "serious" or "critical")
            .Select(violation => $"{violation.Id}: {string.Join(", ", violation.Nodes.Select(node => node.Html))}");
        Assert.Empty(serious);
    }

    [Theory]
    [InlineData("l")]
    [InlineData("?")]
    [InlineData("v")]
    [InlineData("r")]
    public async Task Axe_finds_no_serious_fault_in_a_dialog(string key)
    {
        await using var context = await chromium.Browser.NewContextAsync(new() { ReducedMotion = ReducedMotion.Reduce });
        var page = await OpenAsync(context, "presenter");
        await page.Keyboard.PressAsync(key);
        await Assertions.Expect(page.GetByRole(AriaRole.Dialog)).ToBeVisibleAsync();

        var result = await page.RunAxe();

        Assert.DoesNotContain(result.Violations, violation => violation.Impact is "serious" or "critical");
    }

    [Theory]
    [MemberData(nameof(EachSize))]
    public async Task A_page_fits_its_window(string name, int width, int height)
    {
        await using var context = await chromium.Browser.NewContextAsync(new() { ViewportSize = new() { Width = width, Height = height } });
        var page = await OpenAsync(context, name);
        await PutOnAirAsync(context, withCues: name is "presenter" or "desk");

        var overflow = await page.EvaluateAsync<int[]>(
            "() => { const d = document.documentElement; return [d.scrollWidth - d.clientWidth, d.scrollHeight - d.clientHeight]; }");

        Assert.Equal([0, 0], overflow);
    }

    [Theory]
    [InlineData("presenter")]
    [InlineData("desk")]
    [InlineData("overlay")]
    [InlineData("stage")]
    public async Task No_page_shows_a_key(string name)
    {
        await using var context = await chromium.Browser.NewContextAsync();
        var page = await OpenAsync(context, name);
        var key = LinkOf(name).Fragment["#k=".Length..];

        Assert.Equal(43, key.Length);
        Assert.DoesNotContain(key, page.Url, StringComparison.Ordinal);
        Assert.DoesNotContain(key, await page.ContentAsync(), StringComparison.Ordinal);
    }

    [Fact]
    public async Task An_unknown_key_is_refused_in_one_plain_sentence()
    {
        await using var context = await chromium.Browser.NewContextAsync();
        var page = await context.NewPageAsync();
        await page.GotoAsync($"{_companion.Presenter.GetLeftPart(UriPartial.Path)}#k={new string('A', 43)}");
        await Assertions.Expect(page.GetByText("link", new() { Exact = false }).First).ToBeVisibleAsync();
        await Assertions.Expect(page.GetByRole(AriaRole.Gridcell)).ToHaveCountAsync(0);
    }

    private async Task<IPage> OpenAsync(IBrowserContext context, string name)
    {
        var page = await context.NewPageAsync();
        await page.GotoAsync(LinkOf(name).ToString());
        var drawn = name switch { "presenter" or "desk" => "[role=gridcell]", "stage" => "main svg", _ => ".board-place" };
        await Assertions.Expect(page.Locator(drawn).First).ToBeAttachedAsync();
        return page;
    }

    private Uri LinkOf(string name) => name switch
    {
        "presenter" => _companion.Presenter,
        "desk" => _companion.Desk,
        "stage" => _companion.Stage,
        _ => _companion.Overlay(),
    };

    // With something to see: the first open deduction in full and, on a panel, cues that stand by, go and are done.
    private async Task PutOnAirAsync(IBrowserContext context, bool withCues)
    {
        var presenter = await PresenterPage.OpenAsync(context, _companion);
        await presenter.Deductions.First.ClickAsync();
        await Assertions.Expect(presenter.Page.GetByRole(AriaRole.Button, new() { Name = "Stand down" })).ToBeVisibleAsync();
        if (withCues)
            await CueAsync(presenter);
        for (var grade = 1; grade <= 4; grade++)
        {
            await presenter.PressAsync("n");
            await Assertions.Expect(presenter.OnAir.GetByText($"Grade {grade} of 4")).ToBeVisibleAsync();
        }

        await presenter.Page.CloseAsync();
    }

    private static async Task CueAsync(PresenterPage presenter)
    {
        await presenter.PressAsync("q");
        await Assertions.Expect(presenter.Cues.Rows).ToHaveCountAsync(1);
        await presenter.Cues.WriteAsync("Thanks to the setter");
        await presenter.Cues.WriteAsync("Who sees where the next one comes from?");
        await Assertions.Expect(presenter.Cues.Rows).ToHaveCountAsync(3);
        foreach (var (row, key, stage) in new[] { (0, "g", "Go"), (1, "k", "Done"), (2, "s", "Stand by") })
        {
            await presenter.Cues.Rows.Nth(row).ClickAsync();
            await presenter.PressAsync(key);
            await Assertions.Expect(presenter.Cues.Rows.Nth(row)).ToContainTextAsync(stage);
        }

        await presenter.Cell("r1c1").FocusAsync();
    }
}
