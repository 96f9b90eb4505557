using System.Diagnostics;
using System.Globalization;
using Companion.Engine;
using Companion.Engine.Rules;

namespace Companion.Benchmarks;

/// <summary>How long the scan after an entry takes and what it allocates, as a whole and rule by rule.</summary>
internal static class Scans
{
    // The ladder as it was before chains and rectangles: a fixed measure for what the longer one costs.
    private static readonly IRule[] Seventeen =
    [
        new FullHouse(), new HiddenSingle(), new NakedSingle(), new Pointing(), new Claiming(), new TwoBlockClaiming(),
        new NakedPair(), new HiddenPair(), new NakedTriple(), new HiddenTriple(), new XWing(), new XYWing(), new XYZWing(),
        new Swordfish(), new NakedQuad(), new HiddenQuad(), new Jellyfish(),
    ];

    internal static void Print(TextWriter output)
    {
        Print(output, "17 clues", Puzzles.BoardsOnPaths(puzzles: 20));
        Print(output, "hard", Puzzles.BoardsOnPaths(Puzzles.Sample("hard-1465-part.txt", 30)));
    }

    private static void Print(TextWriter output, string which, Board[] boards)
    {
        if (boards.Length == 0)
            return;
        Times.Head(output, $"scan of boards on the ways through puzzles, {which}");
        var baseline = Times.Line(output, "17 rules (baseline)", boards, board => Find(Seventeen, board));
        Times.Line(output, "quick rules, those delivered first", boards, board => Ladder.Whole.Scan(board, Effort.Pattern), baseline);
        Times.Line(output, "all rules but nets", boards, board => Ladder.Whole.Scan(board), baseline);
        output.WriteLine();
        output.WriteLine("| scan | deductions | bytes allocated | bytes kept | ratio |");
        output.WriteLine("| --- | ---: | ---: | ---: | ---: |");
        PrintBytes(output, "17 rules", boards, board => Find(Seventeen, board));
        PrintBytes(output, "all rules but nets", boards, board => Ladder.Whole.Scan(board));
        output.WriteLine();
        PrintRules(output, boards);
    }

    private static Findings Find(IRule[] rules, Board board)
    {
        var found = new Findings();
        foreach (var rule in rules)
            rule.Find(board, found);
        return found;
    }

    // What a scan allocates against what of it the caller keeps: the rest is waste.
    private static void PrintBytes(TextWriter output, string what, Board[] boards, Func<Board, Findings> scan)
    {
        var kept = new Findings[boards.Length];
        var heldBefore = GC.GetTotalMemory(forceFullCollection: true);
        var before = GC.GetAllocatedBytesForCurrentThread();
        for (var i = 0; i < boards.Length; i++)
            kept[i] = scan(boards[i]);
        var allocated = GC.GetAllocatedBytesForCurrentThread() - before;
        var held = GC.GetTotalMemory(forceFullCollection: true) - heldBefore;
        output.WriteLine(string.Create(CultureInfo.InvariantCulture,
            $"| {what} | {kept.Average(found => found.Count):F1} | {allocated / boards.Length} | {held / boards.Length} | {(double)allocated / held:F2} |"));
    }

    // Each rule where the scan comes to it: of what several share, the first pays for all.
    private static void PrintRules(TextWriter output, Board[] boards)
    {
        const int Turns = 5;
        var rules = Ladder.Whole.WithoutLastResorts().Rules;
        var shortest = new long[rules.Length, boards.Length];
        var allocated = new long[rules.Length];
        var count = new long[rules.Length];
        for (var turn = 0; turn < Turns; turn++)
        {
            for (var at = 0; at < boards.Length; at++)
            {
                var found = new Findings();
                for (var place = 0; place < rules.Length; place++)
                {
                    var (before, bytes, start) = (found.Count, GC.GetAllocatedBytesForCurrentThread(), Stopwatch.GetTimestamp());
                    rules[place].Find(boards[at], found);
                    var ticks = Stopwatch.GetTimestamp() - start;
                    shortest[place, at] = turn == 0 ? ticks : Math.Min(shortest[place, at], ticks);
                    allocated[place] += GC.GetAllocatedBytesForCurrentThread() - bytes;
                    count[place] += found.Count - before;
                }
            }
        }

        output.WriteLine("| rule, in the order of the scan | mean us | share | found | bytes | bytes each |");
        output.WriteLine("| --- | ---: | ---: | ---: | ---: | ---: |");
        var total = shortest.Cast<long>().Sum();
        for (var place = 0; place < rules.Length; place++)
        {
            var ticks = Enumerable.Range(0, boards.Length).Sum(at => shortest[place, at]);
            output.WriteLine(string.Create(CultureInfo.InvariantCulture,
                $"| {rules[place].Id} | {ticks * 1e6 / Stopwatch.Frequency / boards.Length:F1} | {(double)ticks / total:P1} | {(double)count[place] / boards.Length / Turns:F2} | {allocated[place] / boards.Length / Turns} | {(count[place] == 0 ? 0 : allocated[place] / count[place])} |"));
        }
    }
}
