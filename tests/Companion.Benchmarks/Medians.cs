using System.Diagnostics;
using System.Globalization;
using Companion.Engine;
using Companion.Engine.Rules;
using Companion.Engine.Search;
using Companion.Engine.Tests.Search;

namespace Companion.Benchmarks;

/// <summary>
/// Medians over puzzles and boards, which BenchmarkDotNet does not give: a mean hides that a few puzzles take a hundred times as
/// long. Each is measured some times and its shortest time counts, which leaves out what the rest of the machine did.
/// </summary>
internal static class Medians
{
    private const int Times = 5;

    internal static void Print(TextWriter output)
    {
        output.WriteLine("| what | n | median us | 90 % us | 99 % us | mean us |");
        output.WriteLine("| --- | ---: | ---: | ---: | ---: | ---: |");
        var puzzles = Puzzles.Sample(20_000);
        var dancingLinks = new DancingLinks();
        Line(output, "one solution? the engine's search", puzzles, puzzle => Expect(1, SolutionCounter.Count(puzzle)));
        Line(output, "one solution? dancing links", Puzzles.Sample(2_000), puzzle => Expect(1, dancingLinks.Count(puzzle, limit: 2)));
        Line(output, "one solution? OR-Tools CP-SAT", Puzzles.Sample(200).Select(Board.Parse), board => Expect(1, ConstraintSolver.Solutions(board, limit: 2).Count));

        var boards = Puzzles.BoardsOnPaths(puzzles: 300);
        Line(output, "scan, standard ladder, quick rules", boards, board => Ladder.Standard.Scan(board, Effort.Pattern));
        Line(output, "scan, standard ladder", boards, board => Ladder.Standard.Scan(board));
        Line(output, "scan, whole ladder", boards, board => Ladder.Whole.Scan(board));
        foreach (var rule in Ladder.Whole.Rules)
            Line(output, $"scan, {rule.Id} alone", boards, board => rule.Find(board, new()));
        var hard = Puzzles.BoardsOnPaths(Puzzles.Sample("hard-1465-part.txt", 100));
        Line(output, "scan, standard ladder, quick rules, hard puzzles", hard, board => Ladder.Standard.Scan(board, Effort.Pattern));
        Line(output, "scan, standard ladder, hard puzzles", hard, board => Ladder.Standard.Scan(board));
        foreach (var rule in Ladder.Whole.Rules)
            Line(output, $"scan, {rule.Id} alone, hard puzzles", hard, board => rule.Find(board, new()));
        Line(output, "one solution? the same boards", boards, board => Expect(1, SolutionCounter.Count(board)));
        output.WriteLine();
        PrintBytes(output, boards);
    }

    // What a scan allocates against what of it the caller keeps: the rest is waste.
    private static void PrintBytes(TextWriter output, Board[] boards)
    {
        var kept = new Findings[boards.Length];
        var heldBefore = GC.GetTotalMemory(forceFullCollection: true);
        var before = GC.GetAllocatedBytesForCurrentThread();
        for (var i = 0; i < boards.Length; i++)
            kept[i] = Ladder.Standard.Scan(boards[i]);
        var allocated = GC.GetAllocatedBytesForCurrentThread() - before;
        var held = GC.GetTotalMemory(forceFullCollection: true) - heldBefore;
        var deductions = kept.Sum(found => found.Count);
        output.WriteLine(string.Create(CultureInfo.InvariantCulture,
            $"A scan finds {(double)deductions / boards.Length:F1} deductions, allocates {allocated / boards.Length} bytes and keeps {held / boards.Length} of them ({(double)allocated / held:F2} : 1)."));
    }

    private static void Line<T>(TextWriter output, string what, IEnumerable<T> items, Action<T> act)
    {
        var all = items.ToArray();
        Shortest(all, act); // Forgotten: the runtime was still compiling.
        var microseconds = Shortest(all, act).Order().ToArray();
        var n = microseconds.Length;
        if (n > 0)
        {
            output.WriteLine(string.Create(CultureInfo.InvariantCulture,
                $"| {what} | {n} | {microseconds[n / 2]:F1} | {microseconds[n * 9 / 10]:F1} | {microseconds[n * 99 / 100]:F1} | {microseconds.Average():F1} |"));
        }
    }

    // All items by turns, so that nothing kept from the last time is of use.
    private static double[] Shortest<T>(T[] items, Action<T> act)
    {
        var shortest = Enumerable.Repeat(double.MaxValue, items.Length).ToArray();
        for (var time = 0; time < Times; time++)
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

    private static void Expect(int expected, int found)
    {
        if (found != expected)
            throw new InvalidOperationException($"{found} found, not {expected}.");
    }
}
