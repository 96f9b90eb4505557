using System.Diagnostics;
using System.Globalization;
using Companion.Engine;
using Companion.Engine.Planning;
using Companion.Engine.Rules;
using Companion.Engine.Search;

namespace Companion.Benchmarks;

/// <summary>
/// How many puzzles a second are solved with the explanation of every step, on all cores, against how many are only counted to have
/// one solution. A puzzle that the ladder does not solve is paid for all the same.
/// </summary>
internal static class ExplainedSolves
{
    private static readonly Ladder Ladder = Puzzles.Ladder.WithoutUniqueness();

    internal static void Print(TextWriter output)
    {
        var boards = Puzzles.Sample(int.MaxValue).Select(Board.Parse).ToArray();
        Measure(boards[..Math.Min(boards.Length, 2_000)], Explain); // Forgotten: the runtime was still compiling.
        output.WriteLine("| what | puzzles | yes | a second, all cores | us of one core each |");
        output.WriteLine("| --- | ---: | ---: | ---: | ---: |");
        Line(output, "solved with every step explained", boards, Explain);
        Line(output, "counted to have one solution (baseline)", boards, board => SolutionCounter.Count(board) == 1);
    }

    private static bool Explain(Board start)
    {
        var route = Route.From(start, Ladder);
        if (route.IsComplete && SolutionCounter.Find(start)[0].ToString() != route.End.ToString())
            throw new InvalidOperationException($"{start} leads to {route.End}.");
        return route.IsComplete;
    }

    // The time of the cores beside that of the clock, since other work may be going on.
    private static void Line(TextWriter output, string what, Board[] boards, Predicate<Board> act)
    {
        var (clock, cores, yes) = Measure(boards, act);
        output.WriteLine(string.Create(CultureInfo.InvariantCulture,
            $"| {what} | {boards.Length} | {yes} | {boards.Length / clock.TotalSeconds:F0} | {cores.TotalMicroseconds / boards.Length:F1} |"));
    }

    private static (TimeSpan Clock, TimeSpan Cores, int Yes) Measure(Board[] boards, Predicate<Board> act)
    {
        var yes = 0;
        var cores = Environment.CpuUsage.TotalTime;
        var start = Stopwatch.GetTimestamp();
        Parallel.ForEach(
            boards,
            new ParallelOptions { MaxDegreeOfParallelism = Environment.ProcessorCount },
            board =>
            {
                if (act(board))
                    Interlocked.Increment(ref yes);
            });
        return (Stopwatch.GetElapsedTime(start), Environment.CpuUsage.TotalTime - cores, yes);
    }
}
