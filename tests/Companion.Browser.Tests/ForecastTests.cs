using System.Text.RegularExpressions;
using Microsoft.Playwright;

namespace Companion.Browser.Tests;

/// <summary>The presenter sees when the featured rule of the demo comes, by the keyboard alone, and nobody else does.</summary>
public sealed class ForecastTests(Chromium chromium) : IAsyncLifetime
{
    // Where other things run too, looking ahead takes longer than a page is waited for by default.
    private static readonly LocatorAssertionsToContainTextOptions Patiently = new() { Timeout = 30_000 };

    private CompanionProcess _companion = null!;

    public async ValueTask InitializeAsync() => _companion = await CompanionProcess.StartAsync();

    public ValueTask DisposeAsync() => _companion.DisposeAsync();

    [Fact]
    public async Task By_keys_alone_the_steps_are_read_the_cells_to_watch_show_and_each_entry_brings_the_rule_nearer()
    {
        await using var context = await chromium.Browser.NewContextAsync(new() { ViewportSize = new() { Width = 1280, Height = 720 } });
        var presenter = await PresenterPage.OpenAsync(context, _companion);
        var overlay = await context.NewPageAsync();
        await overlay.GotoAsync(_companion.Overlay().ToString());
        await presenter.Page.BringToFrontAsync();
        var line = presenter.Page.GetByRole(AriaRole.Region, new() { Name = "Featured rules" }).GetByRole(AriaRole.Button, new() { Name = "XY-wing" });
        await Assertions.Expect(line).ToContainTextAsync("easier steps away", Patiently);
        var steps = await StepsAsync(line);

        var watched = presenter.Page.Locator("[role=gridcell].pointed");
        await Assertions.Expect(watched).ToHaveCountAsync(0);
        await presenter.PressAsync("e");
        await Assertions.Expect(watched).ToHaveCountAsync(3);
        await presenter.PressAsync("e");
        await Assertions.Expect(watched).ToHaveCountAsync(0);
        await line.FocusAsync();
        await Assertions.Expect(watched).ToHaveCountAsync(3);

        // Six in block one has one place left; the way to the wing leads by it or is no longer for it.
        await presenter.TypeAsync("r3c2", "6");
        await presenter.TypeAsync("r2c6", "1");
        await Assertions.Expect(presenter.Page.Locator(".forecast .behind.not")).ToHaveCountAsync(1, new() { Timeout = 30_000 });
        await Assertions.Expect(line).ToContainTextAsync("easier steps away", Patiently);
        Assert.InRange(await StepsAsync(line), 1, steps);
        Assert.DoesNotContain("wing", await overlay.ContentAsync(), StringComparison.OrdinalIgnoreCase);
    }

    [Fact]
    public async Task Beside_the_run_sheet_there_is_little_room_and_the_words_keep_within_it()
    {
        await using var context = await chromium.Browser.NewContextAsync(new() { ViewportSize = new() { Width = 1920, Height = 1080 } });
        var presenter = await PresenterPage.OpenAsync(context, _companion);
        var line = presenter.Page.GetByRole(AriaRole.Region, new() { Name = "Featured rules" }).GetByRole(AriaRole.Button, new() { Name = "XY-wing" });
        await Assertions.Expect(line).ToContainTextAsync("easier steps away", Patiently);
        await presenter.PressAsync("o");
        await Assertions.Expect(presenter.Page.GetByRole(AriaRole.Region, new() { Name = "Run sheet" })).ToBeVisibleAsync();

        Assert.True(await line.EvaluateAsync<bool>("line => line.scrollWidth <= line.clientWidth"));
    }

    [Fact]
    public async Task Beside_the_run_sheet_many_rules_leave_room_for_what_is_chosen()
    {
        await using var context = await chromium.Browser.NewContextAsync(new() { ViewportSize = new() { Width = 1280, Height = 720 } });
        var presenter = await PresenterPage.OpenAsync(context, _companion);
        await presenter.PressAsync("l");
        var load = presenter.Page.GetByRole(AriaRole.Dialog, new() { Name = "Load a puzzle" });
        await load.Locator("textarea").FillAsync(Examples.WithRectangle);
        foreach (var rule in new[] { "naked-pair", "x-wing", "xy-wing", "swordfish" })
            await load.GetByLabel("Feature another rule").SelectOptionAsync(rule);
        await load.GetByRole(AriaRole.Button, new() { Name = "Load", Exact = true }).ClickAsync();
        await Assertions.Expect(presenter.Page.Locator(".forecast li")).ToHaveCountAsync(4, new() { Timeout = 30_000 });
        await presenter.PressAsync("o");
        await presenter.Deductions.First.ClickAsync();

        var down = (await presenter.Page.GetByRole(AriaRole.Button, new() { Name = "Stand down" }).BoundingBoxAsync())!;
        var next = (await presenter.Page.Locator(".next-area").BoundingBoxAsync())!;
        Assert.InRange(down.Y + down.Height, next.Y, next.Y + next.Height);

        var watched = presenter.Page.Locator(".forecast [aria-pressed=true]");
        await Assertions.Expect(presenter.Page.Locator(".forecast li").Last).Not.ToBeInViewportAsync();
        for (var rule = 0; rule < 2; rule++)
        {
            await presenter.PressAsync("e");
            await Assertions.Expect(watched).ToBeInViewportAsync(new() { Ratio = 0.9f });
        }
    }

    private static async Task<int> StepsAsync(ILocator line) =>
        int.Parse(Regex.Match(await line.TextContentAsync() ?? "", @"(\d+) easier").Groups[1].Value, System.Globalization.CultureInfo.InvariantCulture);
}
