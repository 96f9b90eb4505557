using System.Text.RegularExpressions;
using Microsoft.Playwright;

namespace Companion.Browser.Tests;

/// <summary>The presenter's panel as a person uses it: by labels and keys.</summary>
internal sealed class PresenterPage
{
    // A companion that was just started, on a machine on which other things run; a test that needs as long as this has failed.
    private const float Patience = 30_000;

    private PresenterPage(IPage page) => Page = page;

    public IPage Page { get; }

    public ILocator Deductions => Page.GetByRole(AriaRole.Listbox, new() { Name = "Open deductions" }).GetByRole(AriaRole.Option);

    public ILocator Watch => Page.GetByRole(AriaRole.Region, new() { Name = "Watch" });

    public CuesPart Cues => new(Page);

    public ILocator OnAir => Page.GetByRole(AriaRole.Region, new() { Name = "On air" });

    public static async Task<PresenterPage> OpenAsync(IBrowserContext context, CompanionProcess companion)
    {
        var page = await context.NewPageAsync();
        await page.GotoAsync(companion.Presenter.ToString());
        var presenter = new PresenterPage(page);
        await Assertions.Expect(presenter.Cell("r1c1")).ToBeVisibleAsync(new() { Timeout = Patience });
        return presenter;
    }

    public ILocator Cell(string name) => Page.GetByRole(AriaRole.Gridcell, new() { NameRegex = new Regex($"^{name},") });

    public async Task LoadAsync(string grid)
    {
        await Page.Keyboard.PressAsync("l");
        await Page.Locator("textarea[name=grid]").FillAsync(grid);
        await Page.Locator("input[name=title]").FillAsync("Lanterns, No. 1");
        await Page.GetByRole(AriaRole.Button, new() { Name = "Load", Exact = true }).Last.ClickAsync();
        await Assertions.Expect(Page.GetByRole(AriaRole.Dialog)).ToHaveCountAsync(0, new() { Timeout = Patience });
    }

    /// <summary>Goes to the cell by arrow keys and types there.</summary>
    public async Task TypeAsync(string cell, params string[] keys)
    {
        await Cell(cell).FocusAsync();
        await Cell(cell).ClickAsync();
        foreach (var key in keys)
            await Page.Keyboard.PressAsync(key);
    }

    public Task PressAsync(string key) => Page.Keyboard.PressAsync(key);

    public Task ExpectAsync(string cell, string contents) =>
        Assertions.Expect(Page.Locator($"[role=gridcell][aria-label='{cell}, {contents}']")).ToHaveCountAsync(1);
}
