using System.Collections.Concurrent;
using System.Globalization;
using Companion.Engine;
using Companion.Engine.Proofs;
using Companion.Engine.Rules;

namespace Companion.Benchmarks;

/// <summary>
/// What one deduction of each rule costs whoever follows it, for <c>configs/ladder.json</c>: how many candidates there are to look
/// at (those that must be gone and those of the pattern that stand), how many houses to keep in mind, how many links to go along.
/// It is measured on the boards where the rule's turn comes, that is where nothing easier finds anything; of several instances the
/// least one counts, since nobody would take another; and the cost is the median over the boards.
/// </summary>
internal static class Costs
{
    internal static void Print(TextWriter output)
    {
        string[] puzzles =
        [
            .. Puzzles.Sample(4_000), .. Puzzles.Sample("hard-1465-part.txt", 2_000), .. Puzzles.Sample("essay-top95.txt", 95),
        ];
        var atItsTurn = new Tally();
        var anywhere = new Tally(); // for a rule whose turn never comes, since something easier is always there as well
        Parallel.ForEach(puzzles, puzzle => Measure(Board.Parse(puzzle), atItsTurn, anywhere));
        output.WriteLine($"Boards on the ways through {puzzles.Length} puzzles.");
        output.WriteLine();
        output.WriteLine("| rule | boards | which | 10 % | cost | 90 % |");
        output.WriteLine("| --- | ---: | --- | ---: | ---: | ---: |");
        foreach (var rule in Puzzles.Ladder.Rules)
            output.WriteLine(Line(rule.Id, atItsTurn.Of(rule.Id), anywhere.Of(rule.Id)));
    }

    private static void Measure(Board start, Tally atItsTurn, Tally anywhere)
    {
        for (var board = start; Puzzles.Ladder.Easiest(board) is { } easiest; board = board.Apply(easiest))
        {
            if (Puzzles.Ladder[easiest.Rule].Rule.Effort == Effort.LastResort)
                atItsTurn.Add(easiest.Rule, Cost(easiest, board));
            foreach (var found in Puzzles.Ladder.Scan(board).GroupBy(deduction => deduction.Rule))
            {
                var least = found.Min(deduction => Cost(deduction, board));
                anywhere.Add(found.Key, least);
                if (found.Key == easiest.Rule)
                    atItsTurn.Add(found.Key, least);
            }
        }
    }

    private static int Cost(Deduction deduction, Board board)
    {
        var standing = board.Candidates & CandidateSet.Of(deduction.PatternCells, deduction.Digits);
        return (deduction.RestsOn | standing).Count + deduction.Houses.Count + deduction.Links.Length;
    }

    private static string Line(RuleId rule, int[] atItsTurn, int[] anywhere)
    {
        var (which, costs) = atItsTurn.Length > 0 ? ("its turn", atItsTurn) : ("any", anywhere);
        return costs.Length == 0
            ? $"| {rule} | 0 | | | | |"
            : string.Create(
                CultureInfo.InvariantCulture,
                $"| {rule} | {costs.Length} | {which} | {costs[costs.Length / 10]} | {costs[costs.Length / 2]} | {costs[costs.Length * 9 / 10]} |");
    }

    /// <summary>Numbers by rule, added from several threads.</summary>
    private sealed class Tally
    {
        private readonly ConcurrentDictionary<RuleId, ConcurrentBag<int>> _numbers = new();

        public void Add(RuleId rule, int number) => _numbers.GetOrAdd(rule, _ => []).Add(number);

        public int[] Of(RuleId rule) => _numbers.TryGetValue(rule, out var numbers) ? [.. numbers.Order()] : [];
    }
}
