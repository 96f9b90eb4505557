using System.Globalization;
using Companion.Engine;
using Companion.Engine.Search;

namespace Companion.Benchmarks;

/// <summary>
/// How hard the puzzles are that our generator makes: minimal ones without symmetry, from fixed seeds, how many givens they have and
/// how many are solved by the rules up to each rung. To be held against what is published of minimal puzzles.
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
    }

    private static void Line(TextWriter output, string what, int solved)
    {
        var share = (double)solved / Count;
        output.WriteLine(string.Create(CultureInfo.InvariantCulture,
            $"| {what} | {solved} | {100 * share:F2} % | {100 * Math.Sqrt(share * (1 - share) / Count):F2} |"));
    }
}
