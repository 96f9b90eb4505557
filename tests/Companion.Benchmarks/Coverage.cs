using System.Collections.Concurrent;
using System.Globalization;
using Companion.Engine;
using Companion.Engine.Planning;
using Companion.Engine.Proofs;
using Companion.Engine.Rules;
using Companion.Engine.Search;

namespace Companion.Benchmarks;

/// <summary>
/// How far the ladder leads: for each list of the open data the share that is solved with the rules up to each rung, without nets,
/// then with nets. Every step is held against the solution, and what last resorts find is replayed by the checker too.
/// </summary>
internal static class Coverage
{
    private static readonly string[] Lists = ["seventeen-clue.txt", "hard-1465-part.txt", "hardest-375-part.txt"];

    private static int _replayed;
    private static int _tooWide;

    internal static void Print(TextWriter output)
    {
        var whole = Puzzles.Ladder;
        var plain = whole.WithoutUniqueness().Without(["nets"]);
        foreach (var list in Lists)
        {
            var boards = Puzzles.Sample(list, int.MaxValue).Select(Board.Parse).ToArray();
            if (boards.Length == 0)
            {
                output.WriteLine($"{list} is absent.");
                continue;
            }

            var needs = Needs(boards, plain);
            output.WriteLine($"{list}: {boards.Length} puzzles");
            output.WriteLine("| rules up to | solved | share |");
            output.WriteLine("| --- | ---: | ---: |");
            foreach (var rung in plain.Rungs.Where(rung => needs.Values.Any(need => need?.Place == rung.Place)))
                Line(output, rung.Rule.Id.ToString(), needs.Values.Count(need => need?.Place <= rung.Place), boards.Length);
            var stuck = boards.Where(board => needs[board] is null).ToArray();
            Line(output, "and with rules that assume one solution", Solved(stuck, whole.Without(["nets"])), boards.Length);
            Line(output, "and with nets instead", Solved(stuck, whole.WithoutUniqueness()), boards.Length);
            output.WriteLine($"{_replayed} deductions of last resorts replayed by the checker; it gave up on {_tooWide} as too wide and refused none.");
            output.WriteLine();
            (_replayed, _tooWide) = (0, 0);

            int Solved(Board[] left, Ladder ladder) =>
                boards.Length - stuck.Length + Needs(left, ladder).Values.Count(need => need is not null);
        }
    }

    // The hardest rung that each puzzle needs; null where the ladder does not lead to the solution.
    internal static ConcurrentDictionary<Board, Rung?> Needs(Board[] boards, Ladder ladder)
    {
        var needs = new ConcurrentDictionary<Board, Rung?>(ReferenceEqualityComparer.Instance);
        Parallel.ForEach(
            Partitioner.Create(boards, loadBalance: true),
            new ParallelOptions { MaxDegreeOfParallelism = Environment.ProcessorCount },
            board => needs[board] = Need(board, ladder));
        return needs;
    }

    private static Rung? Need(Board start, Ladder ladder)
    {
        var route = Route.From(start, ladder);
        var solution = SolutionCounter.Find(start)[0];
        foreach (var round in route.Rounds)
        {
            foreach (var deduction in round.Open)
            {
                if (!deduction.Places.All(solution.Holds) || deduction.Removes.Any(solution.Holds))
                    throw new InvalidOperationException($"Wrong on {start}: {deduction}");
                if (round.Rung.Rule.Effort == Effort.LastResort)
                    Replay(round.Board, deduction);
            }
        }

        return route.IsComplete ? route.Hardest : null;
    }

    private static void Replay(Board board, Deduction deduction)
    {
        var verdict = ProofChecker.Check(board, deduction);
        if (verdict is ProofVerdict.TooWide)
            Interlocked.Increment(ref _tooWide);
        else if (!verdict.Holds)
            throw new InvalidOperationException($"Refused on {board}: {deduction}");
        Interlocked.Increment(ref _replayed);
    }

    private static void Line(TextWriter output, string what, int solved, int all)
    {
        output.WriteLine(string.Create(CultureInfo.InvariantCulture, $"| {what} | {solved} | {100.0 * solved / all:F2} % |"));
        output.Flush();
    }
}
