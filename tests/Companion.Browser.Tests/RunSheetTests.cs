using Deque.AxeCore.Playwright;
using Microsoft.Playwright;

namespace Companion.Browser.Tests;

/// <summary>The presenter vets a puzzle before it is loaded, features a rule and goes by the run sheet.</summary>
public sealed class RunSheetTests(Chromium chromium) : WithCompanion(chromium)
{
    // Vetting and planning take seconds where other things run too; a test that needs as long as this has failed.
    private static readonly LocatorAssertionsToContainTextOptions Patiently = new() { Timeout = 30_000 };

    [Fact]
    public async Task A_mistyped_grid_is_vetted_corrected_and_loaded_and_its_run_sheet_goes_on_with_each_entry()
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

        await presenter.PressAsync("o");
        var sheet = presenter.Page.GetByRole(AriaRole.Dialog, new() { Name = "Run sheet" });
        await Assertions.Expect(sheet.GetByRole(AriaRole.Status)).ToContainTextAsync("52 steps from here", Patiently);
        await Assertions.Expect(sheet.Locator(".featured-rules b")).ToHaveTextAsync("XY-wing");
        await sheet.GetByRole(AriaRole.Button, new() { Name = "Note at step 2", Exact = true }).ClickAsync();
        await presenter.Page.Keyboard.TypeAsync("Thank the setter");
        await presenter.PressAsync("Enter");
        await Assertions.Expect(sheet.Locator("q")).ToHaveTextAsync("Thank the setter");
        await ExpectAccessibleAsync(presenter.Page);

        var first = await sheet.Locator("[aria-current=step] .short").TextContentAsync();
        var (cell, digit) = (first!.Split(" → ")[1].Split(' ')[0], first[^1..]);
        await presenter.PressAsync("Escape");
        await presenter.TypeAsync(cell, digit);
        await presenter.PressAsync("o");
        await Assertions.Expect(sheet.Locator(".short").Filter(new() { HasText = $"→ {cell} is" })).ToHaveCountAsync(0, new() { Timeout = 30_000 });
        await Assertions.Expect(sheet.Locator("q")).ToHaveTextAsync("Thank the setter");
        await sheet.Locator(".done-steps summary").FocusAsync();
        await presenter.PressAsync("Enter");
        await Assertions.Expect(sheet.Locator(".done-steps li")).ToContainTextAsync($"{digit} in {cell}");
        await ExpectAccessibleAsync(presenter.Page);
    }

    private static async Task ExpectAccessibleAsync(IPage page)
    {
        var result = await page.RunAxe();
        Assert.DoesNotContain(result.Violations, violation => violation.Impact is "serious" or "critical");
    }
}
