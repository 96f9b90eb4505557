using Companion.Engine.Planning;
using Companion.Engine.Proofs;
using Companion.Server.Planning;

namespace Companion.Server.CommandLine;

/// <summary>A puzzle of our own; with <c>--json</c> it is written as it stands.</summary>
/// <param name="Puzzle">The givens, 81 characters.</param>
/// <param name="Solution">The solution.</param>
/// <param name="Clues">How many givens.</param>
/// <param name="Seed">The seed with which this puzzle comes first, as long as the other options are the same.</param>
/// <param name="Hardest">The hardest rule needed.</param>
/// <param name="Grade">How hard it is.</param>
internal sealed record MadeResult(
    string Puzzle, string Solution, int Clues, ulong Seed, RuleId? Hardest, GradeFigures Grade)
{
    /// <summary>The result of a puzzle.</summary>
    /// <param name="made">The puzzle.</param>
    public static MadeResult Of(MadePuzzle made) => new(
        made.Puzzle.Board.ToString(),
        made.Puzzle.Solution.ToString(),
        made.Puzzle.Board.Givens.Count,
        made.Seed,
        made.Route.Hardest?.Rule.Id,
        GradeFigures.Of(PuzzleGrade.Of(made.Route)));

    /// <summary>The result as a line for people, which the other commands read as well.</summary>
    /// <param name="wording">The words.</param>
    public string Line(Wording wording) =>
        $"{Puzzle}\t{Clues} givens\t{Grade.Word}, work {Grade.Work}\t{(Hardest is { } rule ? wording.NameOf(rule) : "nothing")}\tseed {Seed}";
}
