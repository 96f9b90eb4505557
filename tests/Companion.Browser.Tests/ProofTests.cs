using Deque.AxeCore.Playwright;
using Microsoft.Playwright;

namespace Companion.Browser.Tests;

/// <summary>What the presenter is told of entries and cells, by keys alone.</summary>
public sealed class ProofTests(Chromium chromium) : WithCompanion(chromium)
{
    [Fact]
    public async Task An_entry_tells_how_it_follows_and_a_key_asks_why()
    {
        var presenter = await PresenterPage.OpenAsync(Context, Companion);
        await presenter.LoadAsync(Examples.Easy);

        await presenter.TypeAsync("r5c5", "5");

        var summary = presenter.Watch.Locator("summary");
        await Assertions.Expect(summary).ToHaveTextAsync(
            "5 in r5c5 follows in 3 steps, the hardest a hidden single; a naked single does it alone");
        await Assertions.Expect(presenter.Watch.Locator(".steps")).ToBeHiddenAsync();
        await summary.FocusAsync();
        await presenter.PressAsync("Enter");
        await Assertions.Expect(presenter.Watch.Locator(".steps li")).ToHaveCountAsync(3);
        await Assertions.Expect(presenter.Watch.Locator(".steps")).ToBeVisibleAsync();

        await presenter.Cell("r5c2").FocusAsync();
        await presenter.Cell("r5c2").ClickAsync();
        await presenter.PressAsync("y");
        var dialog = presenter.Page.GetByRole(AriaRole.Dialog, new() { Name = "Why? r5c2" });
        await presenter.PressAsync("9");
        await Assertions.Expect(dialog).ToContainTextAsync("Row five column two cannot be nine: it sees row three column two, which is.");
        await presenter.PressAsync("2");
        await Assertions.Expect(dialog).ToContainTextAsync("Row five column two is two.");
        Assert.True(await dialog.Locator(".steps li").CountAsync() > 0);
        var result = await presenter.Page.RunAxe();
        Assert.DoesNotContain(result.Violations, violation => violation.Impact is "serious" or "critical");

        await presenter.PressAsync("Escape");
        await Assertions.Expect(dialog).ToHaveCountAsync(0);
        await Assertions.Expect(presenter.Cell("r5c2")).ToBeFocusedAsync();
    }
}
