using System.Globalization;
using Companion.Engine;
using Companion.Engine.Search;

namespace Companion.Benchmarks;

/// <summary>
/// How hard the puzzles are that our generator makes: minimal ones without symmetry, from fixed seeds, how many givens they have and
/// how many are solved by the rules up to each rung. Beside them what is published of minimal puzzles and of the lists of the open data.
/// </summary>
internal static class MadePuzzles
{
    private const int Count = 4_000;
    private const ulong FirstSeed = 40_000;

    private static readonly (string What, string Last)[] Rungs =
    [
        ("singles", "naked-single"),
        ("and locked candidates", "two-block-claiming"),
        ("and pairs and triples", "hidden-triple"),
        ("up to WXYZ-wing", "wxyz-wing"),
        ("up to alternating inference chains", "alternating-inference-chain"),
        ("and all but nets", ""),
    ];

    // What the README of the open data says of its lists, recomputed there by an independent checker: how many of the 49,151 puzzles with
    // 17 clues (G. Royle) and of the 1,465 hard ones; and what D. Berthier estimates of all minimal puzzles (CISSE 2009, table 3), in %.
    private static readonly (string Last, int SeventeenClue, int Hard, double? All)[] Published =
    [
        ("naked-single", 21_905, 0, 35.08), ("two-block-claiming", 37_373, 60, 44.90), ("hidden-triple", 41_643, 308, null),
    ];

    internal static void Print(TextWriter output)
    {
        var boards = new Board[Count];
        Parallel.For(0, Count, index => boards[index] = Generator.Make(FirstSeed + (ulong)index, new() { Symmetry = null }).Board);
        var ladder = Puzzles.Ladder.WithoutUniqueness().Without(["nets"]);
        var hardest = Coverage.Needs(boards, ladder).Values;
        output.WriteLine(string.Create(CultureInfo.InvariantCulture,
            $"{Count} made puzzles, seeds {FirstSeed} on; {boards.Average(board => board.Givens.Count):F2} givens in the mean, {boards.Min(board => board.Givens.Count)} to {boards.Max(board => board.Givens.Count)}."));
        output.WriteLine("| rules | solved | share | error (one standard deviation) |");
        output.WriteLine("| --- | ---: | ---: | ---: |");
        foreach (var (what, last) in Rungs)
        {
            var place = last.Length == 0 ? int.MaxValue : ladder.RungOf(new(last));
            Line(output, what, hardest.Count(rung => rung is not null && rung.Place <= place));
        }

        output.WriteLine();
        output.WriteLine("| rules | ours | 17 clues | hard-1465 | all minimal |");
        output.WriteLine("| --- | ---: | ---: | ---: | ---: |");
        foreach (var (last, seventeenClue, hard, all) in Published)
        {
            var ours = hardest.Count(rung => rung is not null && rung.Place <= ladder.RungOf(new(last)));
            output.WriteLine(string.Create(CultureInfo.InvariantCulture,
                $"| {Rungs.First(rung => rung.Last == last).What} | {Percent(ours, Count)} | {Percent(seventeenClue, 49_151)} | {Percent(hard, 1_465)} | {(all is { } estimate ? $"{estimate.ToString("F2", CultureInfo.InvariantCulture)} %" : "")} |"));
        }
    }

    private static string Percent(int solved, int of) => string.Create(CultureInfo.InvariantCulture, $"{100.0 * solved / of:F2} %");

    private static void Line(TextWriter output, string what, int solved)
    {
        var share = (double)solved / Count;
        output.WriteLine(string.Create(CultureInfo.InvariantCulture,
            $"| {what} | {solved} | {100 * share:F2} % | {100 * Math.Sqrt(share * (1 - share) / Count):F2} |"));
    }
}
