using Deque.AxeCore.Playwright;
using Microsoft.Playwright;

namespace Companion.Browser.Tests;

/// <summary>The presenter vets a puzzle before it is loaded, features a rule and goes by the run sheet.</summary>
public sealed class RunSheetTests(Chromium chromium) : WithCompanion(chromium)
{
    // Vetting and planning take seconds where other things run too; a test that needs as long as this has failed.
    private static readonly LocatorAssertionsToContainTextOptions Patiently = new() { Timeout = 30_000 };

    [Fact]
    public async Task A_mistyped_grid_is_vetted_corrected_and_loaded_with_a_rule_to_show()
    {
        var presenter = await PresenterPage.OpenAsync(Context, Companion);
        await presenter.PressAsync("l");
        var load = presenter.Page.GetByRole(AriaRole.Dialog, new() { Name = "Load a puzzle" });
        await load.Locator("textarea").FillAsync(Examples.Easy[..80] + "8");
        await load.GetByLabel("Feature another rule").SelectOptionAsync("xy-wing");
        await load.GetByRole(AriaRole.Button, new() { Name = "Vet it" }).ClickAsync();
        await load.GetByRole(AriaRole.Button, new() { Name = "Make r9c9 9" }).ClickAsync();
        await Assertions.Expect(load).ToContainTextAsync("One solution, 30 givens", Patiently);
        await Assertions.Expect(load).ToContainTextAsync("XY-wing: not needed");
        await ExpectAccessibleAsync(presenter.Page);
        await load.GetByRole(AriaRole.Button, new() { Name = "Load", Exact = true }).ClickAsync();
        await Assertions.Expect(load).ToHaveCountAsync(0);

        var sheet = await OpenAsync(presenter);
        await Assertions.Expect(sheet.GetByRole(AriaRole.Status)).ToContainTextAsync("52 steps from here", Patiently);
        await Assertions.Expect(sheet.Locator(".featured-rules b")).ToHaveTextAsync("XY-wing");
    }

    [Fact]
    public async Task It_stands_beside_the_board_and_goes_on_with_each_entry_that_is_made_by_keys_alone()
    {
        var presenter = await PresenterPage.OpenAsync(Context, Companion);
        await presenter.LoadAsync(Examples.Easy);
        var sheet = await OpenAsync(presenter);
        await Assertions.Expect(sheet.GetByRole(AriaRole.Status)).ToContainTextAsync("51 steps from here", Patiently);
        Assert.False(await OverlapAsync(sheet, presenter.Page.Locator(".board-area")));
        Assert.False(await OverlapAsync(sheet, presenter.Page.Locator(".next-area")));
        await ExpectAccessibleAsync(presenter.Page);

        // The first step is in words; by O the focus is there, whatever was pressed before it was planned.
        var now = sheet.Locator("[aria-current=step]");
        await Assertions.Expect(now.Locator(".say")).Not.ToBeEmptyAsync();
        await presenter.Cell("r1c1").FocusAsync();
        await presenter.PressAsync("o");
        await Assertions.Expect(now.Locator(".step-line")).ToBeFocusedAsync();
        await presenter.PressAsync("Tab");
        await presenter.PressAsync("Enter");
        await presenter.Page.Keyboard.TypeAsync("Thank the setter");
        await presenter.PressAsync("Enter");
        await Assertions.Expect(now.Locator("q")).ToHaveTextAsync("Thank the setter");
        await Assertions.Expect(now.GetByRole(AriaRole.Button, new() { Name = "Change the note at step 1" })).ToBeFocusedAsync();
        await presenter.PressAsync("Enter");
        await presenter.Page.Keyboard.TypeAsync("and nobody else");
        await presenter.PressAsync("Escape");
        await Assertions.Expect(now.Locator("q")).ToHaveTextAsync("Thank the setter");

        var first = await now.Locator(".short").TextContentAsync();
        var (cell, digit) = (first!.Split(" → ")[1].Split(' ')[0], first[^1..]);
        await presenter.TypeAsync(cell, digit);
        await Assertions.Expect(sheet.GetByRole(AriaRole.Status)).ToContainTextAsync("Step 2 of 51", Patiently);
        await Assertions.Expect(now.Locator(".number")).ToHaveTextAsync("2");
        await Assertions.Expect(now.Locator("time")).Not.ToHaveTextAsync("0:00", new() { Timeout = 30_000 });
        await sheet.Locator(".done-steps summary").FocusAsync();
        await presenter.PressAsync("Enter");
        await Assertions.Expect(sheet.Locator(".done-steps li")).ToContainTextAsync($"{digit} in {cell}");
        await Assertions.Expect(sheet.Locator(".done-steps q")).ToHaveTextAsync("Thank the setter");
        await ExpectAccessibleAsync(presenter.Page);

        // The same puzzle again, after a reload of the page, which remembers that the sheet was open.
        await presenter.Page.ReloadAsync();
        await Assertions.Expect(sheet).ToBeVisibleAsync();
        await presenter.LoadAsync(Examples.Easy);
        await Assertions.Expect(now.Locator("q")).ToHaveTextAsync("Thank the setter", new() { Timeout = 30_000 });
        await now.Locator(".step-line").FocusAsync();
        await presenter.PressAsync("o");
        await Assertions.Expect(sheet).ToHaveCountAsync(0);
        await Assertions.Expect(presenter.Page.Locator("[role=gridcell]:focus")).ToHaveCountAsync(1);
    }

    private static async Task<ILocator> OpenAsync(PresenterPage presenter)
    {
        await presenter.PressAsync("o");
        var sheet = presenter.Page.GetByRole(AriaRole.Region, new() { Name = "Run sheet" });
        await Assertions.Expect(sheet).ToBeVisibleAsync();
        return sheet;
    }

    private static async Task<bool> OverlapAsync(ILocator one, ILocator other)
    {
        var (a, b) = ((await one.BoundingBoxAsync())!, (await other.BoundingBoxAsync())!);
        return a.X < b.X + b.Width && b.X < a.X + a.Width && a.Y < b.Y + b.Height && b.Y < a.Y + a.Height;
    }

    private static async Task ExpectAccessibleAsync(IPage page)
    {
        var result = await page.RunAxe();
        Assert.DoesNotContain(result.Violations, violation => violation.Impact is "serious" or "critical");
    }
}
