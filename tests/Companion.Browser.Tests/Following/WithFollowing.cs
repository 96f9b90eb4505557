using Companion.Sight.Tests.Digits;
using Deque.AxeCore.Playwright;
using Microsoft.Playwright;

namespace Companion.Browser.Tests.Following;

/// <summary>Each test has a companion of its own, and a window of a Chromium that shows the solving page to whoever asks for a screen.</summary>
public abstract class WithFollowing(SharingBrowser browser) : IClassFixture<SharingBrowser>, IAsyncLifetime
{
    // Pictures are taken, sent and read twice before something is entered; a busy machine takes its time for it.
    internal const float Patience = 30_000;

    protected SharingBrowser Browser { get; } = browser;

    protected CompanionProcess Companion { get; private set; } = null!;

    protected IBrowserContext Context { get; private set; } = null!;

    public async ValueTask InitializeAsync()
    {
        Companion = await CompanionProcess.StartAsync();
        Context = await Browser.OpenAsync();
    }

    public async ValueTask DisposeAsync()
    {
        GC.SuppressFinalize(this);
        await Context.DisposeAsync();
        await Companion.DisposeAsync();
    }

    private protected async Task<(SolvingPage Program, PresenterPage Presenter)> FollowAsync(
        string? look = null, Func<SolvingPage, Task>? before = null)
    {
        var program = await SolvingPage.OpenAsync(Context, Examples.Easy, look);
        if (before is not null)
            await before(program);
        var presenter = await PresenterPage.OpenAsync(Context, Companion);
        await presenter.PressAsync("m");
        await Button(presenter, "Choose a screen").ClickAsync();
        await Button(presenter, "Follow this grid").ClickAsync();
        await Button(presenter, "Load it").ClickAsync();
        await ExpectSignAsync(presenter, "Following the screen");
        await Assertions.Expect(presenter.Page.Locator("[role=gridcell][aria-label='r1c1, 5, given']")).ToHaveCountAsync(1, new() { Timeout = Patience });
        return (program, presenter);
    }

    private protected static async Task<string> OtherLookAsync()
    {
        var folder = Path.Combine(HeldOutFonts.Folder, "node_modules", "@expo-google-fonts", "patrick-hand");
        var face = Directory.GetFiles(folder, "*.ttf", SearchOption.AllDirectories)[0];
        return SolvingLook.DarkCanvas(await File.ReadAllBytesAsync(face, TestContext.Current.CancellationToken));
    }

    // A digit, block marks and a list in two strokes, each followed before the next.
    private protected static async Task BeginAsync(SolvingPage program, PresenterPage presenter)
    {
        await program.PlayAsync("r5c5", "d", "5");
        await ExpectAsync(presenter, "r5c5", "5");
        await program.PlayAsync("r1c3 r2c3", "x", "2");
        await ExpectAsync(presenter, "r1c3", "open, block marks 2");
        await ExpectAsync(presenter, "r2c3", "open, block marks 2");
        await program.PlayAsync("r1c4", "c", "2");
        await ExpectAsync(presenter, "r1c4", "open, cell mark 2");
        await program.PlayAsync("", "6");
        await ExpectAsync(presenter, "r1c4", "open, cell mark 2 6");
    }

    private protected static Task ExpectAsync(PresenterPage presenter, string cell, string contents) =>
        Assertions.Expect(presenter.Page.Locator($"[role=gridcell][aria-label='{cell}, {contents}']")).ToHaveCountAsync(1, new() { Timeout = Patience });

    private protected static Task ExpectSignAsync(PresenterPage presenter, string words) =>
        Assertions.Expect(presenter.Page.Locator(".sign.screen")).ToHaveTextAsync(words, new() { Timeout = Patience });

    private protected static Task ExpectFoundAsync(PresenterPage presenter) =>
        Assertions.Expect(presenter.Page.GetByText("Grid found. Do its corners fit?")).ToBeVisibleAsync(new() { Timeout = Patience });

    private protected static ILocator Asked(PresenterPage presenter) => presenter.Page.GetByRole(AriaRole.Region, new() { Name = "Reading unsure" });

    private protected static ILocator Button(PresenterPage presenter, string name) => presenter.Page.GetByRole(AriaRole.Button, new() { Name = name });

    private protected static Task FocusAsync(PresenterPage presenter, string button) => Button(presenter, button).FocusAsync();

    private protected static async Task ExpectNoSeriousFaultAsync(IPage page) => Assert.Empty(
        (await page.RunAxe()).Violations.Where(violation => violation.Impact is "serious" or "critical")
            .Select(violation => $"{violation.Id}: {string.Join(", ", violation.Nodes.Select(node => node.Html))}"));
}
