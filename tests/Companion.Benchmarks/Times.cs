using System.Diagnostics;
using System.Globalization;

namespace Companion.Benchmarks;

/// <summary>
/// Times of single puzzles or boards, which BenchmarkDotNet does not give: a mean hides that a few take a hundred times as long. Each
/// is measured some times and its shortest time counts, which leaves out what the rest of the machine did.
/// </summary>
internal static class Times
{
    private const int Turns = 5;

    /// <summary>Writes the head of a table of <see cref="Line"/>s.</summary>
    internal static void Head(TextWriter output, string what)
    {
        output.WriteLine($"| {what} | n | median us | 90 % us | 99 % us | mean us | to the baseline |");
        output.WriteLine("| --- | ---: | ---: | ---: | ---: | ---: | ---: |");
    }

    /// <summary>Measures each item and writes one line of a table; nothing where there are no items.</summary>
    /// <returns>The median in microseconds, which is the baseline of lines that name none.</returns>
    internal static double Line<T>(TextWriter output, string what, T[] items, Action<T> act, double? baseline = null)
    {
        if (items.Length == 0)
            return double.NaN;
        Shortest(items, act); // Forgotten: the runtime was still compiling.
        var microseconds = Shortest(items, act).Order().ToArray();
        var n = microseconds.Length;
        var median = microseconds[n / 2];
        output.WriteLine(string.Create(CultureInfo.InvariantCulture,
            $"| {what} | {n} | {median:F1} | {microseconds[n * 9 / 10]:F1} | {microseconds[n * 99 / 100]:F1} | {microseconds.Average():F1} | {median / (baseline ?? median):F2} |"));
        return median;
    }

    // All items by turns, so that nothing kept from the last time is of use.
    private static double[] Shortest<T>(T[] items, Action<T> act)
    {
        var shortest = Enumerable.Repeat(double.MaxValue, items.Length).ToArray();
        for (var turn = 0; turn < Turns; turn++)
        {
            for (var item = 0; item < items.Length; item++)
            {
                var start = Stopwatch.GetTimestamp();
                act(items[item]);
                shortest[item] = Math.Min(shortest[item], Stopwatch.GetElapsedTime(start).TotalMicroseconds);
            }
        }

        return shortest;
    }
}
