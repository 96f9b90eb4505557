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
        var (find, read, whole, fullHd, unchanged) = (new Costs(), new Costs(), new Costs(), new Costs(), new Costs());
        await foreach (var board in DrawnBoard.PaintAsync(browser, FirstSeed, boards))
        {
            var frame = board.Frame;
            var place = find.Of(() => GridFinder.Find(frame));
            screens.Add(board, place is null ? null : read.Of(() => BoardReader.Read(frame, place, GlyphReader.Standard, Lessons.None)));
            var sight = new BoardSight(GlyphReader.Standard);
            (frame is { Width: 1920, Height: 1080 } ? fullHd : whole).Of(() => sight.See(frame, Lessons.None));
            unchanged.Of(() => sight.See(frame, Lessons.None));
            if (board.Style.Seed - FirstSeed < Photographs)
            {
                var photo = Photograph.Of(board, board.Style.Seed);
                photographs.Add(board, GridFinder.Find(photo) is { } corners ? BoardReader.Read(photo, corners, GlyphReader.Standard, Lessons.None) : null);
            }
        }

        output.WriteLine("| pictures | boards | not found | boards right | digits | right | marks | right | wrong strikes | cells held back, % | wrong and not held back | cells with covered ink | rightly held back | givens told | told wrongly |");
        output.WriteLine("| --- | ---: | ---: | ---: | ---: | ---: | ---: | ---: | ---: | ---: | ---: | ---: | ---: | ---: | ---: |");
        screens.Print(output, "screens");
        photographs.Print(output, "photographs");
        output.WriteLine();
        SightTally.PrintConfusion(output, screens.DigitsReadAs);
        output.WriteLine();
        SightTally.PrintConfusion(output, screens.MarksReadAs);
        output.WriteLine();
        output.WriteLine($"find {find}; read {read}; a whole frame of 1,920 by 1,080 {fullHd}, of another size {whole}; nothing changed {unchanged}");
        foreach (var failure in screens.Failures)
            output.WriteLine(failure);
    }

    // On a machine with other work, what the processor spent says more than what the clock says.
    private sealed class Costs
    {
        private readonly List<double> _clock = [], _processor = [];

        public T Of<T>(Func<T> work)
        {
            var (watch, before) = (Stopwatch.StartNew(), Environment.CpuUsage.TotalTime);
            var result = work();
            _clock.Add(watch.Elapsed.TotalMilliseconds);
            _processor.Add((Environment.CpuUsage.TotalTime - before).TotalMilliseconds);
            return result;
        }

        public override string ToString() => string.Create(
            CultureInfo.InvariantCulture,
            $"{At(_clock, 0.5):0.0} ms, least {At(_clock, 0):0.0}, of the processor {At(_processor, 0.5):0.0}, on average {_processor.DefaultIfEmpty().Average():0.0}, 90 % {At(_processor, 0.9):0.0}, most {At(_processor, 1):0.0}");

        // The value below which that part of them is.
        private static double At(List<double> times, double part) => times.Order().ElementAtOrDefault(Math.Min((int)(part * times.Count), times.Count - 1));
    }
}
