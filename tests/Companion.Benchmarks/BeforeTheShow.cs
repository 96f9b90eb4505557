using System.Globalization;
using Companion.Engine;
using Companion.Engine.Planning;
using Companion.Engine.Proofs;

namespace Companion.Benchmarks;

/// <summary>
/// How long a presenter waits for what is worked out before a show: vetting and a run sheet for hard puzzles, a forecast on each board
/// of their ways, and puzzles of our own. Each is done twice and the second time counts, on one core but for the making, and what is measured is the time of the
/// processor, so that other work on the machine counts for little.
/// </summary>
internal static class BeforeTheShow
{
    private const int Count = 300;

    private static readonly RuleId Featured = new("xy-wing");

    internal static void Print(TextWriter output)
    {
        var ladder = Puzzles.Ladder;
        var hard = Puzzles.Sample("hard-1465-part.txt", Count).Select(line => Puzzle.Parse(line.Split('\t')[0])).ToArray();
        var boards = hard.Take(60).SelectMany(puzzle => Route.From(puzzle.Board, ladder.WithoutLastResorts()).Rounds
            .Select(round => (round.Board, puzzle.Solution))).ToArray();
        output.WriteLine("| what | n | median ms | 99 % ms | longest ms |");
        output.WriteLine("| --- | ---: | ---: | ---: | ---: |");
        Line(output, "vetting, XY-wing featured", hard, puzzle => Vetting.Of(new(puzzle.Board.ToString()), ladder, [Featured]).Solutions == 1);
        Line(output, "vetting without last resorts", hard, puzzle => Vetting.Of(new(puzzle.Board.ToString()), ladder.WithoutLastResorts(), [Featured]).Solutions == 1);
        Line(output, "its way alone", hard, puzzle => Route.From(puzzle.Board, ladder).IsComplete);
        Line(output, "run sheet, XY-wing featured", hard, puzzle => RunPlan.From(puzzle.Board, ladder, [new(Featured)]).IsComplete);
        Line(output, "run sheet without last resorts", hard, puzzle => RunPlan.From(puzzle.Board, ladder.WithoutLastResorts(), [new(Featured)]).Steps.Length > 0);
        Line(output, "forecast of XY-wing, one board", boards, its => Forecast.Of(its.Board, its.Solution, ladder, Featured).Rule == Featured);

        var order = new Order(ladder.WithoutLastResorts(), new(), [Featured]);
        var cores = Environment.CpuUsage.TotalTime;
        var made = PuzzleMaker.Make(order, seed: 1, Environment.ProcessorCount).Take(Count).Count();
        var each = (Environment.CpuUsage.TotalTime - cores) / made;
        output.WriteLine(string.Create(CultureInfo.InvariantCulture,
            $"A made puzzle that needs an XY-wing takes {each.TotalMilliseconds:F0} ms of one core: {2 / each.TotalMinutes:F0} a minute on two."));
    }

    private static void Line<T>(TextWriter output, string what, T[] items, Predicate<T> act)
    {
        foreach (var item in items)
            act(item); // Forgotten: the runtime was still compiling, which the few that need nets would pay for.
        var times = Array.ConvertAll(items, item => Time(item, act));
        Array.Sort(times);
        output.WriteLine(string.Create(CultureInfo.InvariantCulture,
            $"| {what} | {times.Length} | {times[times.Length / 2]:F1} | {times[times.Length * 99 / 100]:F1} | {times[^1]:F1} |"));
    }

    private static double Time<T>(T item, Predicate<T> act)
    {
        var start = Environment.CpuUsage.TotalTime;
        if (!act(item))
            throw new InvalidOperationException($"{item} did not come out as it must.");
        return (Environment.CpuUsage.TotalTime - start).TotalMilliseconds;
    }
}
