using BenchmarkDotNet.Attributes;
using Companion.Engine;
using Companion.Engine.Search;
using Companion.Engine.Tests.Search;

namespace Companion.Benchmarks;

/// <summary>How long does it take to be sure that a puzzle has exactly one solution?</summary>
[MemoryDiagnoser]
public class Uniqueness
{
    private const int Sample = 200;

    private readonly string[] _puzzles = Puzzles.Sample(Sample);
    private readonly DancingLinks _dancingLinks = new();

    /// <summary>The engine's search.</summary>
    [Benchmark(OperationsPerInvoke = Sample)]
    public void SolutionCounterHere()
    {
        foreach (var puzzle in _puzzles)
            AssertOne(SolutionCounter.Count(puzzle));
    }

    /// <summary>A plain solver, the baseline.</summary>
    [Benchmark(OperationsPerInvoke = Sample, Baseline = true)]
    public void PlainDancingLinks()
    {
        foreach (var puzzle in _puzzles)
            AssertOne(_dancingLinks.Count(puzzle, limit: 2));
    }

    /// <summary>A general constraint solver.</summary>
    [Benchmark(OperationsPerInvoke = Sample)]
    public void OrToolsCpSat()
    {
        foreach (var puzzle in _puzzles)
            AssertOne(ConstraintSolver.Solutions(Board.Parse(puzzle), limit: 2).Count);
    }

    private static void AssertOne(int solutions)
    {
        if (solutions != 1)
            throw new InvalidOperationException($"{solutions} solutions, not one.");
    }
}
