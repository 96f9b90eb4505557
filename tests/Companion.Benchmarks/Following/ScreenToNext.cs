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
    private const int IdleSeconds = 5;

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

    // What is posted, when, for how long, and how many bytes.
    private const string Posts = """
        window.posts = [];
        const send = window.fetch;
        window.fetch = async (address, request) => {
          if (!String(address).includes('/screen?')) return send(address, request);
          const post = { at: performance.timeOrigin + performance.now(), bytes: request.body.size, whole: !String(address).includes('&of=') };
          window.posts.push(post);
          const answer = await send(address, request);
          post.end = performance.timeOrigin + performance.now();
          return answer;
        };
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
        await panel.AddInitScriptAsync(Posts);
        await FollowAsync(panel, companion);

        await program.Page.EvaluateAsync(PaintClock.OnKey);
        await panel.EvaluateAsync(Watch);
        var samples = new List<Sample>();
        for (var sample = 0; sample < Samples + WarmUp; sample++)
        {
            await program.PlayAsync("r5c5"); // the cell is chosen before, as by hand
            await Task.Delay(PauseMilliseconds);
            await panel.EvaluateAsync("window.reset(); window.posts.length = 0");
            await program.PlayAsync("", sample % 2 == 0 ? "5" : "Control+z");
            await panel.WaitForFunctionAsync("window.seen.board > 0 && window.seen.next > 0");
            await Task.Delay(PauseMilliseconds);
            if (sample >= WarmUp)
                samples.Add(await SampleAsync(program.Page, panel));
        }

        output.WriteLine("| from the program's key, ms | median | p90 |");
        output.WriteLine("| --- | ---: | ---: |");
        output.WriteLine(Row("to the first picture sent", samples.Select(sample => sample.Posts[0].At - sample.Pressed)));
        output.WriteLine(Row("from there to its answer", samples.Select(sample => sample.Posts[0].End - sample.Posts[0].At)));
        output.WriteLine(Row("from there to the second look", samples.Select(sample => sample.Posts[1].At - sample.Posts[0].End)));
        output.WriteLine(Row("from there to its answer", samples.Select(sample => sample.Posts[1].End - sample.Posts[1].At)));
        output.WriteLine(Row("to the entry painted in the panel", samples.Select(sample => sample.Board - sample.Pressed)));
        output.WriteLine(Row("to the deductions painted in Next", samples.Select(sample => sample.Next - sample.Pressed)));
        output.WriteLine();
        output.WriteLine($"Pictures for an entry: {samples.Average(sample => sample.Posts.Length):F1}, "
            + $"{samples.Average(sample => sample.Posts.Sum(post => post.Bytes)):F0} bytes; {samples.Sum(sample => sample.Posts.Count(post => post.Whole))} were whole ones.");
        await panel.EvaluateAsync("window.posts.length = 0");
        await Task.Delay(TimeSpan.FromSeconds(IdleSeconds));
        output.WriteLine($"Pictures in {IdleSeconds} s in which nothing changed on the grid: {await panel.EvaluateAsync<int>("window.posts.length")}.");
    }

    private static async Task<Sample> SampleAsync(IPage program, IPage panel) => new(
        await program.EvaluateAsync<double>("window.pressed"),
        await panel.EvaluateAsync<double>("window.seen.board"),
        await panel.EvaluateAsync<double>("window.seen.next"),
        await panel.EvaluateAsync<Post[]>("window.posts"));

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

    /// <summary>One entry; times are of one clock, in milliseconds.</summary>
    private sealed record Sample(double Pressed, double Board, double Next, Post[] Posts);

    /// <summary>One picture on its way.</summary>
    private sealed record Post
    {
        public double At { get; init; }

        public double End { get; init; }

        public int Bytes { get; init; }

        public bool Whole { get; init; }
    }
}
