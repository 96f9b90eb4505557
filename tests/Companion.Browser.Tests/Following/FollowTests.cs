using System.Text.RegularExpressions;
using Companion.Engine;
using Companion.Session.Events;
using Deque.AxeCore.Playwright;
using Microsoft.Playwright;

namespace Companion.Browser.Tests.Following;

/// <summary>One page plays in a program, the panel follows it by the browser's own screen capture.</summary>
public sealed class FollowTests(SharingBrowser browser) : IClassFixture<SharingBrowser>, IAsyncLifetime
{
    private const string AllEnded = "() => window.shown.length > 0 && window.shown.every(track => track.readyState === 'ended')";

    // Pictures are taken, sent and read twice before something is entered; a busy machine takes its time for it.
    private const float Patience = 30_000;

    private CompanionProcess _companion = null!;
    private IBrowserContext _context = null!;

    public async ValueTask InitializeAsync()
    {
        _companion = await CompanionProcess.StartAsync();
        _context = await browser.OpenAsync();
    }

    public async ValueTask DisposeAsync()
    {
        await _context.DisposeAsync();
        await _companion.DisposeAsync();
    }

    [Fact]
    public async Task What_is_played_in_a_program_is_in_the_log_entry_by_entry_with_marks_and_undo()
    {
        var (program, presenter) = await FollowAsync();

        await program.PlayAsync("r5c5", "d", "5");
        await ExpectAsync(presenter, "r5c5", "5");
        await program.PlayAsync("r1c3 r2c3", "x", "2");
        await ExpectAsync(presenter, "r1c3", "open, block marks 2");
        await ExpectAsync(presenter, "r2c3", "open, block marks 2");
        await program.PlayAsync("r1c4", "c", "2");
        await ExpectAsync(presenter, "r1c4", "open, cell mark 2");
        await program.PlayAsync("", "6");
        await ExpectAsync(presenter, "r1c4", "open, cell mark 2 6");
        await program.PlayAsync("r9c7", "d", "1");
        await ExpectAsync(presenter, "r9c7", "1");
        await program.PlayAsync("", "Control+z");
        await ExpectAsync(presenter, "r9c7", "open");
        await program.PlayAsync("r9c7", "3");
        await ExpectAsync(presenter, "r9c7", "3");
        await program.PlayAsync("", "Control+z");
        await ExpectAsync(presenter, "r9c7", "open");
        await program.PlayAsync("r1c4", "c", "2");
        await ExpectAsync(presenter, "r1c4", "open, cell mark 6");

        Event[] played =
        [
            new DigitPlaced(default, Cell.Parse("r5c5"), Digit.Of(5)),
            new BlockMarkChanged(default, CellSet.Of(Cell.Parse("r1c3"), Cell.Parse("r2c3")), Digit.Of(2), IsSet: true),
            new CellMarkChanged(default, CellSet.Of(Cell.Parse("r1c4")), Digit.Of(2), IsSet: true),
            new CellMarkChanged(default, CellSet.Of(Cell.Parse("r1c4")), Digit.Of(6), IsSet: true),
            new DigitPlaced(default, Cell.Parse("r9c7"), Digit.Of(1)),
            new EntryUndone(default),
            new DigitPlaced(default, Cell.Parse("r9c7"), Digit.Of(3)),
            new EntryUndone(default),
            new CellMarkChanged(default, CellSet.Of(Cell.Parse("r1c4")), Digit.Of(2), IsSet: false),
        ];
        Assert.Equal(played, KeptLog.Entries(_companion.Folder));
    }

    [Fact]
    public async Task A_list_that_stands_is_finished_and_counts()
    {
        var (program, presenter) = await FollowAsync();
        await program.PlayAsync("r1c4", "c", "2", "6");
        await ExpectAsync(presenter, "r1c4", "open, cell mark 2 6");

        await Assertions.Expect(presenter.Page.Locator("[role=gridcell].writing")).ToHaveCountAsync(0, new() { Timeout = Patience });
    }

    [Fact]
    public async Task When_it_is_stopped_the_screen_is_given_back_and_nothing_more_is_sent()
    {
        var (program, presenter) = await FollowAsync();
        var posted = 0;
        presenter.Page.Request += (_, request) => posted += request.Url.Contains("/screen", StringComparison.Ordinal) ? 1 : 0;
        await program.PlayAsync("r5c5", "d", "5");
        await ExpectAsync(presenter, "r5c5", "5");
        Assert.NotEqual(0, posted);

        await presenter.Page.GetByRole(AriaRole.Button, new() { Name = "Stop following" }).ClickAsync();
        Assert.True(await presenter.Page.EvaluateAsync<bool>(AllEnded));
        await Assertions.Expect(presenter.Page.Locator(".sign.screen")).ToHaveCountAsync(0);
        posted = 0;
        await program.PlayAsync("r9c7", "1");
        await presenter.Page.WaitForTimeoutAsync(1500);

        Assert.Equal(0, posted);
        await ExpectAsync(presenter, "r9c7", "open");
    }

    [Fact]
    public async Task When_the_program_is_closed_the_screen_is_lost_and_that_is_said()
    {
        var (program, presenter) = await FollowAsync();
        await program.Page.CloseAsync();

        await ExpectSignAsync(presenter, "Screen lost");
    }

    [Fact]
    public async Task What_nobody_can_read_waits_with_its_picture_and_one_key_enters_it()
    {
        var (program, presenter) = await FollowAsync();
        await presenter.Page.EvaluateAsync("document.activeElement?.blur()");
        await program.ScribbleAsync("r5c5", "%");

        var asked = Asked(presenter);
        await Assertions.Expect(asked).ToContainTextAsync("r5c5 is hard to read", new() { Timeout = Patience });
        await ExpectSignAsync(presenter, "Reading unsure");
        var colours = await asked.Locator("canvas").EvaluateAsync<int>(
            "canvas => new Set(new Uint32Array(canvas.getContext('2d').getImageData(0, 0, 64, 64).data.buffer)).size");
        Assert.True(colours > 2, $"The picture of the cell has {colours} colours.");
        await ExpectAsync(presenter, "r5c5", "open");

        await presenter.PressAsync("5");
        await ExpectAsync(presenter, "r5c5", "5");
        await Assertions.Expect(asked).ToHaveCountAsync(0);
        await ExpectSignAsync(presenter, "Following the screen");
    }

    [Fact]
    public async Task By_keys_alone_a_screen_is_chosen_its_corners_moved_and_followed()
    {
        var program = await SolvingPage.OpenAsync(_context, Examples.Easy);
        var presenter = await PresenterPage.OpenAsync(_context, _companion);
        await presenter.LoadAsync(Examples.Easy);
        await presenter.PressAsync("m");
        await FocusAsync(presenter, "Choose a screen");
        await presenter.PressAsync("Enter");
        await ExpectFoundAsync(presenter);

        var corner = presenter.Page.GetByRole(AriaRole.Button, new() { NameRegex = new Regex("^Upper left corner") });
        await corner.FocusAsync();
        var before = await corner.GetAttributeAsync("style");
        await presenter.PressAsync("ArrowRight");
        Assert.NotEqual(before, await corner.GetAttributeAsync("style"));
        await presenter.PressAsync("ArrowLeft");
        await FocusAsync(presenter, "Follow this grid");
        await presenter.PressAsync("Enter");

        await ExpectSignAsync(presenter, "Following the screen");
        await program.PlayAsync("r5c5", "d", "5");
        await ExpectAsync(presenter, "r5c5", "5");
    }

    [Theory]
    [InlineData(ColorScheme.Light)]
    [InlineData(ColorScheme.Dark)]
    public async Task Axe_finds_no_serious_fault_in_the_dialog_and_in_what_waits(ColorScheme scheme)
    {
        await using var context = await browser.OpenAsync(scheme: scheme);
        var program = await SolvingPage.OpenAsync(context, Examples.Easy);
        var presenter = await PresenterPage.OpenAsync(context, _companion);
        await presenter.LoadAsync(Examples.Easy);
        await presenter.Cues.WriteAsync("Thanks to the setter");
        await presenter.Cell("r1c1").FocusAsync();
        await presenter.PressAsync("m");
        await Button(presenter, "Choose a screen").ClickAsync();
        await ExpectFoundAsync(presenter);
        await ExpectNoSeriousFaultAsync(presenter.Page);

        await Button(presenter, "Follow this grid").ClickAsync();
        await program.ScribbleAsync("r5c5", "%");
        await Assertions.Expect(Asked(presenter)).ToBeVisibleAsync(new() { Timeout = Patience });
        await ExpectNoSeriousFaultAsync(presenter.Page);
    }

    private async Task<(SolvingPage Program, PresenterPage Presenter)> FollowAsync()
    {
        var program = await SolvingPage.OpenAsync(_context, Examples.Easy);
        var presenter = await PresenterPage.OpenAsync(_context, _companion);
        await presenter.PressAsync("m");
        await Button(presenter, "Choose a screen").ClickAsync();
        await Button(presenter, "Follow this grid").ClickAsync();
        await Button(presenter, "Load it").ClickAsync();
        await ExpectSignAsync(presenter, "Following the screen");
        await Assertions.Expect(presenter.Page.Locator("[role=gridcell][aria-label='r1c1, 5, given']")).ToHaveCountAsync(1, new() { Timeout = Patience });
        return (program, presenter);
    }

    private static Task ExpectAsync(PresenterPage presenter, string cell, string contents) =>
        Assertions.Expect(presenter.Page.Locator($"[role=gridcell][aria-label='{cell}, {contents}']")).ToHaveCountAsync(1, new() { Timeout = Patience });

    private static Task ExpectSignAsync(PresenterPage presenter, string words) =>
        Assertions.Expect(presenter.Page.Locator(".sign.screen")).ToHaveTextAsync(words, new() { Timeout = Patience });

    private static Task ExpectFoundAsync(PresenterPage presenter) =>
        Assertions.Expect(presenter.Page.GetByText("Grid found. Do its corners fit?")).ToBeVisibleAsync(new() { Timeout = Patience });

    private static ILocator Asked(PresenterPage presenter) => presenter.Page.GetByRole(AriaRole.Region, new() { Name = "Reading unsure" });

    private static ILocator Button(PresenterPage presenter, string name) => presenter.Page.GetByRole(AriaRole.Button, new() { Name = name });

    private static Task FocusAsync(PresenterPage presenter, string button) => Button(presenter, button).FocusAsync();

    private static async Task ExpectNoSeriousFaultAsync(IPage page) => Assert.Empty(
        (await page.RunAxe()).Violations.Where(violation => violation.Impact is "serious" or "critical")
            .Select(violation => $"{violation.Id}: {string.Join(", ", violation.Nodes.Select(node => node.Html))}"));
}
