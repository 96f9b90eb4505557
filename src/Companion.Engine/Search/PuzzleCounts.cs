using System.Collections.Immutable;
using Companion.Engine.Rules;

namespace Companion.Engine.Search;

/// <summary>
/// Five counts that tell a puzzle's first difficulty: published for a large collection of puzzles, so that an engine can be held
/// against the outside.
/// </summary>
/// <remarks>
/// Source: D. Berthier, "Unbiased Statistics of a Constraint Satisfaction Problem: a Controlled-Bias Generator" (CISSE 2009, DOI
/// 10.1007/978-90-481-9112-3_16).
/// </remarks>
/// <param name="Clues">The filled cells at the start.</param>
/// <param name="CandidatesAtStart">The candidates that the filled cells leave.</param>
/// <param name="FilledAfterSingles">The filled cells when naked and hidden singles find nothing more; 81 where they solve the puzzle.</param>
/// <param name="CandidatesAfterSingles">The candidates left then.</param>
/// <param name="CandidatesAfterLocked">The candidates left when singles, pointing and claiming find nothing more.</param>
public sealed record PuzzleCounts(
    int Clues, int CandidatesAtStart, int FilledAfterSingles, int CandidatesAfterSingles, int CandidatesAfterLocked)
{
    private static readonly ImmutableArray<IRule> Singles = [new NakedSingle(), new HiddenSingle()];
    private static readonly ImmutableArray<IRule> SinglesAndLocked = [.. Singles, new Pointing(), new Claiming()];

    /// <summary>The counts of a puzzle.</summary>
    /// <param name="puzzle">The puzzle.</param>
    public static PuzzleCounts Of(Puzzle puzzle)
    {
        ArgumentNullException.ThrowIfNull(puzzle);
        return Of(puzzle.Board);
    }

    /// <summary>The counts of a board that has a solution; it need not be the only one.</summary>
    /// <param name="start">The board.</param>
    /// <exception cref="ArgumentException">The board has no solution, and a rule placed one digit twice in a house.</exception>
    public static PuzzleCounts Of(Board start)
    {
        ArgumentNullException.ThrowIfNull(start);
        var afterSingles = Fixpoint.Of(start, Singles);
        var afterLocked = Fixpoint.Of(afterSingles, SinglesAndLocked);
        return new(
            start.Filled.Count, start.Candidates.Count, afterSingles.Filled.Count, afterSingles.Candidates.Count, afterLocked.Candidates.Count);
    }
}
