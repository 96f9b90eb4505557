using Companion.Engine;
using Companion.Session.Events;
using Microsoft.Playwright;

namespace Companion.Browser.Tests.Following;

/// <summary>The presenter solves in another tab of the same window, so that the panel is hidden.</summary>
public sealed class HiddenPanelTests
{
    [Fact]
    public async Task A_panel_that_is_hidden_follows_all_the_same()
    {
        using var playwright = await Playwright.CreateAsync();
        await using var companion = await CompanionProcess.StartAsync();
        await using var browser = await PlainBrowser.StartAsync(
            ChromiumExecutable.Options(playwright, $"--auto-select-tab-capture-source-by-title={SolvingPage.Title}"));
        var page = Convert.ToBase64String(System.Text.Encoding.UTF8.GetBytes(SolvingPage.Html(SolvingLook.Plain)));
        var program = await browser.OpenAsync($"data:text/html;base64,{page}");
        await program.UntilAsync("window.begin");
        await program.EvaluateAsync($"window.begin('{Examples.Easy}')");
        var panel = await browser.OpenAsync(companion.Presenter.ToString());
        await panel.ShowAsync();
        await panel.UntilAsync("document.querySelector('[role=gridcell]')");
        await panel.PressAsync("m");
        await panel.ClickAsync("Choose a screen");
        await panel.ClickAsync("Follow this grid");
        await panel.ClickAsync("Load it");
        await panel.UntilAsync("document.querySelector(`[role=gridcell][aria-label='r1c1, 5, given']`)");
        Assert.Equal("visible", await panel.EvaluateAsync("document.visibilityState")); // choosing a tab did not go to it

        await program.ShowAsync();
        await panel.UntilAsync("document.visibilityState === 'hidden'");
        await program.EvaluateAsync("document.querySelector('[data-cell=r5c5]').click()");
        await program.PressAsync("5");
        await Logged(1);
        await program.PressAsync("z", withControl: true);
        await Logged(2);
        await program.PressAsync("5");
        await Logged(3);

        Assert.Equal("hidden", await panel.EvaluateAsync("document.visibilityState"));
        Assert.Equal(
            [new DigitPlaced(default, Cell.Parse("r5c5"), Digit.Of(5)), new EntryUndone(default), new EntryRedone(default)],
            KeptLog.Entries(companion.Folder));
        await panel.ShowAsync();
        await panel.UntilAsync("document.querySelector(`[role=gridcell][aria-label='r5c5, 5']`)");
        Assert.DoesNotContain("held this panel back", await panel.EvaluateAsync("document.body.textContent"), StringComparison.Ordinal);

        Task Logged(int count) => PlainBrowser.Until(() => Task.FromResult(KeptLog.Entries(companion.Folder).Count == count));
    }
}
