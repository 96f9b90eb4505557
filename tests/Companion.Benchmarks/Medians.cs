using Companion.Engine;
using Companion.Engine.Search;
using Companion.Engine.Tests.Search;

namespace Companion.Benchmarks;

/// <summary>How long it takes to tell whether a puzzle has one solution: this engine, and two others that know no rule.</summary>
internal static class Medians
{
    internal static void Print(TextWriter output)
    {
        var dancingLinks = new DancingLinks();
        Times.Head(output, "one solution?");
        var baseline = Times.Line(output, "plain dancing links (baseline)", Puzzles.Sample(2_000), puzzle => Expect(dancingLinks.Count(puzzle, limit: 2)));
        Times.Line(output, "the engine's search", Puzzles.Sample(20_000), puzzle => Expect(SolutionCounter.Count(puzzle)), baseline);
        Times.Line(output, "OR-Tools CP-SAT", [.. Puzzles.Sample(200).Select(Board.Parse)], board => Expect(ConstraintSolver.Solutions(board, limit: 2).Count), baseline);
    }

    private static void Expect(int found)
    {
        if (found != 1)
            throw new InvalidOperationException($"{found} found, not 1.");
    }
}
