using Microsoft.Playwright;

namespace Companion.Browser.Tests;

/// <summary>The presenter cuts the ladder by the keyboard alone.</summary>
public sealed class LadderTests(Chromium chromium) : IAsyncLifetime
{
    private CompanionProcess _companion = null!;

    public async ValueTask InitializeAsync() => _companion = await CompanionProcess.StartAsync();

    public ValueTask DisposeAsync() => _companion.DisposeAsync();

    [Fact]
    public async Task By_keys_alone_the_ladder_is_stopped_and_a_family_switched_and_the_list_keeps_to_it()
    {
        await using var context = await chromium.Browser.NewContextAsync(new() { ViewportSize = new() { Width = 1280, Height = 720 } });
        var presenter = await PresenterPage.OpenAsync(context, _companion);
        await presenter.LoadAsync(Examples.WithRectangle);
        var resting = presenter.Deductions.Filter(new() { HasText = "rests on a single solution" });
        await Assertions.Expect(resting).Not.ToHaveCountAsync(0);

        await presenter.PressAsync("r");
        var dialog = presenter.Page.GetByRole(AriaRole.Dialog, new() { Name = "Ladder" });
        await Assertions.Expect(dialog).ToBeVisibleAsync();
        await dialog.GetByRole(AriaRole.Checkbox, new() { Name = "uniqueness" }).FocusAsync();
        await presenter.PressAsync("Space");
        await Assertions.Expect(dialog.Locator("s").Filter(new() { HasText = "bivalue universal grave" })).ToHaveCountAsync(1);

        await dialog.GetByRole(AriaRole.Combobox).FocusAsync();
        await presenter.Page.Keyboard.TypeAsync("hidden pair");
        await Assertions.Expect(dialog.Locator("s").Filter(new() { HasText = "naked triple" })).ToHaveCountAsync(1);
        await presenter.PressAsync("Escape");

        await Assertions.Expect(resting).ToHaveCountAsync(0);
        await Assertions.Expect(presenter.Page.GetByText("Ladder: nothing past hidden pair, without uniqueness.")).ToBeVisibleAsync();
        await Assertions.Expect(presenter.Page.Locator("[data-id^='naked-pair']")).Not.ToHaveCountAsync(0);
        await Assertions.Expect(presenter.Page.Locator("[data-id^='x-wing']")).ToHaveCountAsync(0);
    }
}
