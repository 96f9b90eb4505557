using System.Collections.Immutable;
using Companion.Engine.Rules;
using Companion.Engine.Search;

namespace Companion.Engine.Tests.Corpus;

/// <summary>How many puzzles of known sets some groups of rules solve.</summary>
public sealed class CheckTableTests
{
    // Source: recomputed with an independent checker, as the open data's description states; the sets are those of P. Norvig,
    // "Solving Any Sudoku Puzzle" (2006, 2021).
    [Theory]
    [InlineData("essay-top95.txt", 95, 0, 10, 29)]
    [InlineData("essay-easy50.txt", 50, 40, 44, 49)]
    public void A_whole_set_is_solved_as_often_as_an_independent_checker_says(
        string fileName, int puzzles, int bySingles, int withLocked, int withPairsAndTriples)
    {
        Assert.Equal((puzzles, bySingles, withLocked, withPairsAndTriples), Table(fileName));
    }

    [Fact]
    public void Naked_singles_alone_solve_12_of_the_50_easy_ones()
    {
        Assert.Equal(12, SolvedBy(RuleSets.NakedSingles, OpenData.Lines("essay-easy50.txt")));
    }

    // The files are parts of the sets that the checker was run on. What it found nowhere in the whole cannot be in a part; the other
    // figures are this engine's own, pinned when they were first seen (they may only fall below the whole set's, which they do).
    [Theory]
    [InlineData("hardest-375-part.txt", 300, 0, 0, 0)] // whole: 375, 0, 0, 0
    [InlineData("hard-1465-part.txt", 1_172, 0, 49, 243)] // whole: 1,465, 0, 60, 308
    [InlineData("seventeen-clue.txt", 44_236, 19_738, 33_617, 37_449)] // whole: 49,151, 21,905, 37,373, 41,643
    public void A_part_of_a_set_is_solved_as_often_as_before(string fileName, int puzzles, int bySingles, int withLocked, int withPairsAndTriples)
    {
        Assert.Equal((puzzles, bySingles, withLocked, withPairsAndTriples), Table(fileName));
    }

    // Each group starts where the one before it stalled, which ends at the same board as starting over.
    private static (int Puzzles, int BySingles, int WithLocked, int WithPairsAndTriples) Table(string fileName)
    {
        var boards = OpenData.Lines(fileName).Select(Board.Parse).ToArray();
        var afterSingles = Stalled(RuleSets.Singles, boards);
        var afterLocked = Stalled(RuleSets.Locked, afterSingles);
        var afterSubsets = Stalled(RuleSets.PairsAndTriples, afterLocked);
        return (boards.Length, boards.Length - afterSingles.Length, boards.Length - afterLocked.Length, boards.Length - afterSubsets.Length);
    }

    private static int SolvedBy(ImmutableArray<IRule> rules, string[] lines) =>
        lines.Length - Stalled(rules, [.. lines.Select(Board.Parse)]).Length;

    private static Board[] Stalled(ImmutableArray<IRule> rules, Board[] boards) =>
        [.. boards.AsParallel().AsOrdered().Select(board => Fixpoint.Of(board, rules)).Where(board => !board.IsFull)];
}
