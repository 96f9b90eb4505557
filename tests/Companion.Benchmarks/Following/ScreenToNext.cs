using Companion.Benchmarks.KeyToPaint;
using Companion.Browser.Tests;
using Companion.Browser.Tests.Following;
using Microsoft.Playwright;

namespace Companion.Benchmarks.Following;

/// <summary>
/// How long it takes from a key in the presenter's program until the panel that follows its screen has painted the entry, and the
/// deductions after it. Both pages in one Chromium, which shows the one to the other.
/// </summary>
internal static class ScreenToNext
{
    private const int Samples = 50;
    private const int WarmUp = 4;
    private const int PauseMilliseconds = 700;

    // P. Norvig's grid1: r5c5 can only be 5, and 5 in r5c5 opens and closes other deductions.
    private const string Puzzle = "530070000600195000098000060800060003400803001700020006060000280000419005000080079";

    // Notes when the frame has been painted in which something differs: the digit in r5c5, the deductions.
    private const string Watch = """
        window.seen = { board: 0, next: 0 };
        const looks = {
          board: () => document.querySelector('[role=gridcell][data-cell="40"]')?.getAttribute('aria-label') ?? '',
          next: () => [...document.querySelectorAll('[role=option][data-id]')].map((option) => option.dataset.id).join(),
        };
        const before = {};
        window.reset = () => { for (const name in looks) { before[name] = looks[name](); window.seen[name] = 0; } };
        window.reset();
        new MutationObserver(() => {
          for (const name in looks) {
            if (window.seen[name] || looks[name]() === before[name]) continue;
            window.seen[name] = -1;
            requestAnimationFrame(() => {
              const after = new MessageChannel();
              after.port1.onmessage = () => { window.seen[name] = performance.timeOrigin + performance.now(); };
              after.port2.postMessage(null);
            });
          }
        }).observe(document, { subtree: true, childList: true, attributes: true, characterData: true });
        """;

    private const string Requests = """
        () => performance.getEntriesByType('resource').filter((entry) => entry.name.includes('/screen?')).map((entry) => entry.duration)
        """;

    public static async Task PrintAsync(TextWriter output)
    {
        using var playwright = await Playwright.CreateAsync();
        await using var browser = await playwright.Chromium.LaunchAsync(
            ChromiumExecutable.Options(playwright, $"--auto-select-tab-capture-source-by-title={SolvingPage.Title}"));
        await using var companion = await CompanionProcess.StartAsync();
        await using var context = await browser.NewContextAsync(Measurement.Context);
        var program = await SolvingPage.OpenAsync(context, Puzzle);
        var panel = await context.NewPageAsync();
        await FollowAsync(panel, companion);

        await program.Page.EvaluateAsync(PaintClock.OnKey);
        await panel.EvaluateAsync(Watch);
        List<double> board = [], next = [];
        for (var sample = 0; sample < Samples + WarmUp; sample++)
        {
            await panel.EvaluateAsync("window.reset()");
            await program.PlayAsync("r5c5", sample % 2 == 0 ? "5" : "Control+z");
            await panel.WaitForFunctionAsync("window.seen.board > 0 && window.seen.next > 0");
            var pressed = await program.Page.EvaluateAsync<double>("window.pressed");
            if (sample >= WarmUp)
            {
                board.Add(await panel.EvaluateAsync<double>("window.seen.board") - pressed);
                next.Add(await panel.EvaluateAsync<double>("window.seen.next") - pressed);
            }

            await Task.Delay(PauseMilliseconds);
        }

        output.WriteLine("| from the program's key, ms | median | p90 |");
        output.WriteLine("| --- | ---: | ---: |");
        output.WriteLine(Row("a picture sent, read and answered", await panel.EvaluateAsync<double[]>(Requests)));
        output.WriteLine(Row("to the entry painted in the panel", board));
        output.WriteLine(Row("to the deductions painted in Next", next));
    }

    private static async Task FollowAsync(IPage panel, CompanionProcess companion)
    {
        await panel.GotoAsync(companion.Presenter.ToString());
        await panel.Locator("[role=gridcell]").First.WaitForAsync();
        await panel.Keyboard.PressAsync("m");
        foreach (var button in new[] { "Choose a screen", "Follow this grid", "Load it" })
            await panel.GetByRole(AriaRole.Button, new() { Name = button }).ClickAsync();
        await panel.Locator("[role=gridcell][aria-label='r1c1, 5, given']").WaitForAsync();
    }

    private static string Row(string name, IEnumerable<double> times)
    {
        var sorted = times.Order().ToList();
        return $"| {name} | {At(0.5):F0} | {At(0.9):F0} |";

        double At(double share) => sorted[(int)(share * (sorted.Count - 1))];
    }
}
