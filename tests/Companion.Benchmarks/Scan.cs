using BenchmarkDotNet.Attributes;
using Companion.Engine;
using Companion.Engine.Rules;
using Companion.Engine.Search;

namespace Companion.Benchmarks;

/// <summary>How long does it take to find every deduction that is open, after an entry?</summary>
[MemoryDiagnoser]
public class Scan
{
    private const int Sample = 1_000;

    private readonly Board[] _boards = Spread(Puzzles.BoardsOnPaths(puzzles: 100));
    private readonly NakedSingle _nakedSingle = new();
    private int _deductions;
    private int _nakedSingles;

    /// <summary>Counts once what is to be found, and makes sure that all of it is true.</summary>
    [GlobalSetup]
    public void Prepare()
    {
        foreach (var board in _boards)
        {
            var solution = SolutionCounter.Find(board).Single();
            foreach (var deduction in Ladder.Standard.Scan(board))
            {
                if (!deduction.Places.All(solution.Holds) || deduction.Removes.Any(solution.Holds))
                    throw new InvalidOperationException($"{deduction} is wrong on {board}.");
                _deductions++;
                _nakedSingles += deduction.Rule == _nakedSingle.Id ? 1 : 0;
            }
        }
    }

    /// <summary>Every rule of the ladder.</summary>
    [Benchmark(OperationsPerInvoke = Sample)]
    public void WholeLadder()
    {
        var found = 0;
        foreach (var board in _boards)
            found += Ladder.Standard.Scan(board).Count;
        AssertFound(_deductions, found);
    }

    /// <summary>The simplest rule alone, the baseline: what it costs to look at each cell once.</summary>
    [Benchmark(OperationsPerInvoke = Sample, Baseline = true)]
    public void NakedSinglesAlone()
    {
        var found = 0;
        foreach (var board in _boards)
        {
            var findings = new Findings();
            _nakedSingle.Find(board, findings);
            found += findings.Count;
        }

        AssertFound(_nakedSingles, found);
    }

    /// <summary>The check that the same boards have one solution.</summary>
    [Benchmark(OperationsPerInvoke = Sample)]
    public void UniquenessCheck()
    {
        var solutions = 0;
        foreach (var board in _boards)
            solutions += SolutionCounter.Count(board);
        AssertFound(Sample, solutions);
    }

    private static Board[] Spread(Board[] boards) =>
        [.. Enumerable.Range(0, Sample).Select(i => boards[(long)i * boards.Length / Sample])];

    private static void AssertFound(int expected, int found)
    {
        if (found != expected)
            throw new InvalidOperationException($"{found} found, not {expected}.");
    }
}
