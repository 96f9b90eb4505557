using System.Diagnostics;
using System.Globalization;
using Companion.Browser.Tests;
using Companion.Sight;
using Companion.Sight.Tests.Boards;
using Microsoft.Playwright;

namespace Companion.Benchmarks.Sight;

/// <summary>How well, and how fast, boards of made-up styles are read that a browser paints in families never trained on.</summary>
internal static class SightTable
{
    private const int FirstSeed = 100_000;
    private const int Photographs = 40;

    // A test's bounds are asserted over other seeds, so that these figures are of boards that nothing was tuned on.
    internal static async Task PrintAsync(TextWriter output, int boards)
    {
        using var playwright = await Playwright.CreateAsync();
        await using var browser = await playwright.Chromium.LaunchAsync(ChromiumExecutable.Options(playwright));
        var (screens, photographs) = (new SightTally(), new SightTally());
        var (find, read, unchanged) = (new List<double>(), new List<double>(), new List<double>());
        await foreach (var board in DrawnBoard.PaintAsync(browser, FirstSeed, boards))
        {
            var frame = board.Frame;
            var place = Timed(find, () => GridFinder.Find(frame));
            screens.Add(board, place is null ? null : Timed(read, () => BoardReader.Read(frame, place, GlyphReader.Standard, Lessons.None)));
            var sight = new BoardSight(GlyphReader.Standard);
            sight.See(frame, Lessons.None);
            Timed(unchanged, () => sight.See(frame, Lessons.None));
            if (board.Style.Seed - FirstSeed < Photographs)
            {
                var photo = Photograph.Of(board, board.Style.Seed);
                photographs.Add(board, GridFinder.Find(photo) is { } corners ? BoardReader.Read(photo, corners, GlyphReader.Standard, Lessons.None) : null);
            }
        }

        output.WriteLine("| pictures | boards | not found | boards right | digits | right | marks | right | wrong strikes | cells held back, % | wrong and not held back | givens told | told wrongly |");
        output.WriteLine("| --- | ---: | ---: | ---: | ---: | ---: | ---: | ---: | ---: | ---: | ---: | ---: | ---: |");
        screens.Print(output, "screens");
        photographs.Print(output, "photographs");
        output.WriteLine();
        SightTally.PrintConfusion(output, screens.DigitsReadAs);
        output.WriteLine();
        SightTally.PrintConfusion(output, screens.MarksReadAs);
        output.WriteLine();
        output.WriteLine($"find {Median(find)}, read {Median(read)}, nothing changed {Median(unchanged)} (medians)");
        foreach (var failure in screens.Failures.Take(100))
            output.WriteLine(failure);
    }

    private static T Timed<T>(List<double> times, Func<T> work)
    {
        var watch = Stopwatch.StartNew();
        var result = work();
        times.Add(watch.Elapsed.TotalMilliseconds);
        return result;
    }

    private static string Median(List<double> times) =>
        times.Count == 0 ? "-" : times.Order().ElementAt(times.Count / 2).ToString("0.0", CultureInfo.InvariantCulture) + " ms";
}
