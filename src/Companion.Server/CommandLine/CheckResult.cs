using System.Collections.Immutable;
using System.Text.Json.Serialization;
using Companion.Engine;
using Companion.Engine.Search;

namespace Companion.Server.CommandLine;

/// <summary>What <c>check</c> finds out about one line; with <c>--json</c> it is written as it stands.</summary>
/// <param name="Line">The number of the line, from 1 on.</param>
/// <param name="Puzzle">The puzzle as it stands there.</param>
/// <param name="Solutions">0, 1, or 2 for more than one.</param>
/// <param name="Solution">The only solution, or null.</param>
/// <param name="Minimal">Whether no given can be left out; null unless there is exactly one solution.</param>
/// <param name="Clues">Filled cells; null where the line is no grid.</param>
/// <param name="CandidatesAtStart">Candidates that these leave; null where the line is no grid.</param>
/// <param name="FilledAfterSingles">See <see cref="PuzzleCounts"/>; null where there is no solution.</param>
/// <param name="CandidatesAfterSingles">See <see cref="PuzzleCounts"/>; null where there is no solution.</param>
/// <param name="CandidatesAfterLocked">See <see cref="PuzzleCounts"/>; null where there is no solution.</param>
internal record CheckResult(
    int Line,
    string Puzzle,
    int Solutions,
    string? Solution,
    bool? Minimal,
    int? Clues,
    int? CandidatesAtStart,
    int? FilledAfterSingles,
    int? CandidatesAfterSingles,
    int? CandidatesAfterLocked)
{
    /// <summary>Every reason why the line is no grid; absent where it is one.</summary>
    [JsonIgnore(Condition = JsonIgnoreCondition.WhenWritingNull)]
    public ImmutableArray<string>? Faults { get; private init; }

    /// <summary>Checks one line.</summary>
    /// <param name="line">Its number.</param>
    /// <param name="text">What stands there.</param>
    public static CheckResult Of(int line, string text)
    {
        var draft = BoardText.Read(text);
        if (Engine.Puzzle.Read(draft).Value is { } puzzle)
            return Of(line, text, 1, puzzle.Board, puzzle);
        var reading = Board.Read(draft);
        if (reading.Value is { } board)
            return Of(line, text, SolutionCounter.Count(board), board, null);
        return new(line, text, 0, null, null, null, null, null, null, null)
        {
            Faults = [.. reading.Faults.Select(fault => fault.Sentence)],
        };
    }

    /// <summary>The result as one line for people.</summary>
    public override string ToString() => $"{Line,6}  {(Faults is { } faults ? string.Join(' ', faults) : Verdict)}";

    private string Verdict => Solutions switch
    {
        0 => $"no solution, {Clues} clues",
        1 when FilledAfterSingles == Cell.Count => $"one solution, {MinimalOrNot}, {Clues} clues, solved by singles",
        1 => $"one solution, {MinimalOrNot}, {Clues} clues, singles fill {FilledAfterSingles} cells and leave {CandidatesAfterSingles} "
            + $"candidates, locked candidates leave {CandidatesAfterLocked}",
        _ => $"more than one solution, {Clues} clues",
    };

    private string MinimalOrNot => Minimal == true ? "minimal" : "not minimal";

    private static CheckResult Of(int line, string text, int solutions, Board board, Puzzle? puzzle)
    {
        var counts = solutions > 0 ? PuzzleCounts.Of(board) : null;
        return new(
            line,
            text,
            solutions,
            puzzle?.Solution.ToString(),
            puzzle is null ? null : Minimality.IsMinimal(puzzle),
            board.Filled.Count,
            board.Candidates.Count,
            counts?.FilledAfterSingles,
            counts?.CandidatesAfterSingles,
            counts?.CandidatesAfterLocked);
    }
}
