using Companion.Browser.Tests;
using Microsoft.Playwright;

namespace Companion.Benchmarks.KeyToPaint;

/// <summary>
/// How long it takes from a key in the panel to the painted overlay, beside the floor: a bare echo that changes one attribute.
/// Both in the same Chromium, one after the other.
/// </summary>
internal static class PanelAndFloor
{
    private const int Samples = 200;

    public static async Task PrintAsync(TextWriter output)
    {
        using var playwright = await Playwright.CreateAsync();
        await using var browser = await playwright.Chromium.LaunchAsync(ChromiumExecutable.Options(playwright));
        var floor = await FloorAsync(browser);
        var ours = await OursAsync(browser);
        output.WriteLine("| key to paint, ms | median | p99 |");
        output.WriteLine("| --- | --- | --- |");
        output.WriteLine(Row("floor: bare echo, one attribute", floor));
        output.WriteLine(Row("panel key to overlay picture", ours));
        output.WriteLine($"| ratio | {At(ours, 0.5) / At(floor, 0.5):F2} | {At(ours, 0.99) / At(floor, 0.99):F2} |");
    }

    private static async Task<double[]> FloorAsync(IBrowser browser)
    {
        await using var app = await EchoServer.StartAsync();
        await using var context = await browser.NewContextAsync(Measurement.Context);
        var pages = new List<IPage>();
        for (var page = 0; page < 2; page++)
        {
            pages.Add(await context.NewPageAsync());
            await pages[page].GotoAsync(app.Urls.First());
            await pages[page].WaitForFunctionAsync("document.body.dataset.ready === 'yes'");
        }

        return await Measurement.OfAsync(pages[0], pages[1], Samples, ["n", "p"]);
    }

    private static async Task<double[]> OursAsync(IBrowser browser)
    {
        await using var companion = await CompanionProcess.StartAsync();
        await using var context = await browser.NewContextAsync(Measurement.Context);
        var presenter = await context.NewPageAsync();
        await presenter.GotoAsync(companion.Presenter.ToString());
        var overlay = await context.NewPageAsync();
        await overlay.GotoAsync(companion.Overlay().ToString());
        await presenter.Locator("[role=option]").First.ClickAsync();
        await presenter.Locator("[role=option][aria-selected=true]").WaitForAsync();
        await presenter.Keyboard.PressAsync("n");
        await overlay.Locator(".shapes > *").First.WaitForAsync(new() { State = WaitForSelectorState.Attached });

        // From grade 1 to 2, 3, 4 and back: each changes the picture.
        return await Measurement.OfAsync(presenter, overlay, Samples, ["n", "n", "n", "p", "p", "p"]);
    }

    private static string Row(string name, double[] times) => $"| {name} | {At(times, 0.5):F1} | {At(times, 0.99):F1} |";

    private static double At(double[] sorted, double share) => sorted[(int)(share * (sorted.Length - 1))];
}
