using Microsoft.Playwright;

namespace Companion.Browser.Tests;

/// <summary>What the presenter sets about viewers, by keys alone.</summary>
public sealed class ViewersTests(Chromium chromium) : IAsyncLifetime
{
    private CompanionProcess _companion = null!;

    public async ValueTask InitializeAsync() => _companion = await CompanionProcess.StartAsync();

    public ValueTask DisposeAsync() => _companion.DisposeAsync();

    [Fact]
    public async Task The_code_that_measures_the_delay_goes_on_the_overlay_by_keys_and_is_cleared_with_it()
    {
        await using var context = await chromium.Browser.NewContextAsync();
        var presenter = await PresenterPage.OpenAsync(context, _companion);
        var overlay = await context.NewPageAsync();
        await overlay.GotoAsync(_companion.Overlay().ToString());
        await presenter.Page.BringToFrontAsync();

        await presenter.PressAsync("v");
        await presenter.Page.GetByRole(AriaRole.Button, new() { Name = "Show a code" }).FocusAsync();
        await presenter.PressAsync("Enter");

        var code = await presenter.Page.Locator("dialog code").InnerTextAsync();
        await Assertions.Expect(overlay.Locator(".delay-code")).ToHaveTextAsync($"delay {code}");

        await presenter.PressAsync("Escape");
        await Assertions.Expect(presenter.Page.GetByRole(AriaRole.Dialog)).ToHaveCountAsync(0);
        await presenter.PressAsync("Escape");
        await Assertions.Expect(overlay.Locator(".delay-code")).ToHaveCountAsync(0);
    }

    [Fact]
    public async Task A_limit_that_is_set_stays_when_the_dialog_is_opened_again()
    {
        await using var context = await chromium.Browser.NewContextAsync();
        var presenter = await PresenterPage.OpenAsync(context, _companion);
        await presenter.PressAsync("v");
        await presenter.Page.GetByRole(AriaRole.Radio, new() { Name = "4 why" }).FocusAsync();
        await presenter.PressAsync("ArrowLeft");
        await Assertions.Expect(presenter.Page.GetByRole(AriaRole.Radio, new() { Name = "3 which" })).ToBeCheckedAsync();

        await presenter.PressAsync("Escape");
        await presenter.PressAsync("v");

        await Assertions.Expect(presenter.Page.GetByRole(AriaRole.Radio, new() { Name = "3 which" })).ToBeCheckedAsync();
    }
}
