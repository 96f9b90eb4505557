using Microsoft.Playwright;

namespace Companion.Browser.Tests;

/// <summary>Two co-hosts and the presenter, each in a browser of their own unless a test says otherwise.</summary>
public sealed class CueTests(Chromium chromium) : IAsyncLifetime
{
    private const string Single = "naked-single 5 single r5c5";

    private readonly List<IBrowserContext> _browsers = [];
    private CompanionProcess _companion = null!;

    public async ValueTask InitializeAsync() => _companion = await CompanionProcess.StartAsync();

    public async ValueTask DisposeAsync()
    {
        foreach (var browser in _browsers)
            await browser.DisposeAsync();
        await _companion.DisposeAsync();
    }

    [Fact]
    public async Task Panels_of_the_presenter_and_of_a_co_host_are_open_in_one_browser()
    {
        var browser = await BrowserAsync();
        var presenter = await PresenterPage.OpenAsync(browser, _companion);
        var coHost = await OpenDeskAsync(browser);
        foreach (var page in new[] { presenter.Page, coHost, presenter.Page })
        {
            await page.ReloadAsync();
            await Assertions.Expect(page.GetByText("Connected", new() { Exact = true })).ToBeVisibleAsync();
        }

        await Assertions.Expect(coHost.GetByRole(AriaRole.Heading, new() { Name = "Co-host's desk" })).ToHaveCountAsync(1);
        await Assertions.Expect(presenter.Page.GetByRole(AriaRole.Heading, new() { Name = "Presenter's desk" })).ToHaveCountAsync(1);
        await presenter.LoadAsync(Examples.Easy);
        await Assertions.Expect(coHost.GetByText("Lanterns, No. 1")).ToBeVisibleAsync();
    }

    [Fact]
    public async Task Two_co_hosts_fill_and_order_one_list_and_the_presenter_takes_a_cue_on_air_with_one_key()
    {
        var presenter = await PresenterPage.OpenAsync(await BrowserAsync(), _companion);
        await presenter.LoadAsync(Examples.Easy);
        var (first, second) = (await OpenDeskAsync(await BrowserAsync()), await OpenDeskAsync(await BrowserAsync()));
        var (ones, others) = (new CuesPart(first), new CuesPart(second));
        var overlay = await _browsers[0].NewPageAsync();
        await overlay.GotoAsync(_companion.Overlay().ToString());

        await ones.WriteAsync("Thanks to the setter");
        await second.Locator($"[role=option][data-id^='{Single}']").ClickAsync();
        await second.GetByLabel("Grade of the cue").SelectOptionAsync("3");
        await second.Keyboard.PressAsync("Escape");
        await second.GetByRole(AriaRole.Button, new() { Name = "Cue", Exact = true }).ClickAsync();
        await Assertions.Expect(ones.Rows).ToHaveCountAsync(2);
        await others.PressAsync("naked single", "Alt+ArrowUp");
        foreach (var list in new[] { ones, others, presenter.Cues })
            await Assertions.Expect(list.Rows).ToContainTextAsync(["naked single", "Thanks to the setter"]);

        var board = await BoardAsync(presenter.Page);
        await ones.PressAsync("naked single", "s");
        await Assertions.Expect(presenter.Cues.Call).ToContainTextAsync("Stand by");
        await others.PressAsync("naked single", "g");
        await Assertions.Expect(presenter.Cues.Call).ToContainTextAsync("Go");
        Assert.Equal(board, await BoardAsync(presenter.Page));
        Assert.False(board.Overlaps(await BoxAsync(presenter.Cues.Call)), "The call covers the board.");
        await Assertions.Expect(overlay.Locator(".shapes > *")).ToHaveCountAsync(0);

        await presenter.Cell("r1c1").FocusAsync();
        await presenter.PressAsync("t");

        await Assertions.Expect(overlay.Locator(".shapes > *")).Not.ToHaveCountAsync(0);
        await Assertions.Expect(presenter.OnAir.GetByText("Grade 3 of 4")).ToBeVisibleAsync();
        await Assertions.Expect(presenter.Cues.Call).ToHaveCountAsync(0);
        await Assertions.Expect(ones.Rows.First).ToContainTextAsync("Done");
    }

    [Fact]
    public async Task Who_changes_what_somebody_else_changed_just_now_keeps_their_words_and_is_told_to_look_again()
    {
        var (first, second) = (await OpenDeskAsync(await BrowserAsync()), await OpenDeskAsync(await BrowserAsync()));
        var (ones, others) = (new CuesPart(first), new CuesPart(second));
        await ones.WriteAsync("Thanks");
        await Assertions.Expect(others.Rows).ToHaveCountAsync(1);

        await ones.PressAsync("Thanks", "e");
        await others.PressAsync("Thanks", "e");
        await others.WriteAsync("Many thanks");
        await Assertions.Expect(ones.Rows.First).ToContainTextAsync("Many thanks");
        await ones.Writer.FillAsync("Thanks to the setter");
        await ones.Writer.PressAsync("Enter");

        await Assertions.Expect(first.GetByText("Somebody changed this just now: look again.")).ToBeVisibleAsync();
        await Assertions.Expect(ones.Writer).ToHaveValueAsync("Thanks to the setter");
        await Assertions.Expect(others.Rows.First).ToContainTextAsync("Many thanks");
    }

    [Fact]
    public async Task The_presenter_gives_and_takes_a_co_hosts_way_on_air_with_one_key()
    {
        var presenter = await PresenterPage.OpenAsync(await BrowserAsync(), _companion);
        var coHost = await OpenDeskAsync(await BrowserAsync());
        var permission = coHost.Locator(".permission");
        await Assertions.Expect(permission).ToHaveTextAsync("The presenter alone puts things on air now.");

        await presenter.PressAsync("a");
        await Assertions.Expect(permission).ToHaveTextAsync("You may put things on air.");
        await Assertions.Expect(presenter.Page.GetByRole(AriaRole.Checkbox, new() { Name = "Co-hosts may put things on air" })).ToBeCheckedAsync();

        await presenter.PressAsync("a");
        await Assertions.Expect(permission).ToHaveTextAsync("The presenter alone puts things on air now.");
    }

    private async Task<IBrowserContext> BrowserAsync()
    {
        var browser = await chromium.Browser.NewContextAsync(new() { ViewportSize = new() { Width = 1280, Height = 720 } });
        _browsers.Add(browser);
        return browser;
    }

    private async Task<IPage> OpenDeskAsync(IBrowserContext browser)
    {
        var page = await browser.NewPageAsync();
        await page.GotoAsync(_companion.Desk.ToString());
        await Assertions.Expect(page.GetByRole(AriaRole.Gridcell).First).ToBeVisibleAsync();
        return page;
    }

    private static Task<Box> BoardAsync(IPage page) => BoxAsync(page.GetByRole(AriaRole.Grid));

    private static async Task<Box> BoxAsync(ILocator element)
    {
        var box = (await element.BoundingBoxAsync())!;
        return new(box.X, box.Y, box.X + box.Width, box.Y + box.Height);
    }

    private readonly record struct Box(float Left, float Top, float Right, float Bottom)
    {
        public bool Overlaps(Box other) => Left < other.Right && other.Left < Right && Top < other.Bottom && other.Top < Bottom;
    }
}
