using System.Collections.Immutable;
using System.Text.Json.Serialization;
using Companion.Engine;
using Companion.Engine.Planning;
using Companion.Engine.Proofs;
using Companion.Engine.Rules;
using Companion.Server.Planning;
using Route = Companion.Engine.Planning.Route;

namespace Companion.Server.CommandLine;

/// <summary>What <c>check</c> finds out about a line where it is asked how hard the puzzle is.</summary>
internal sealed record GradedResult : CheckResult
{
    private readonly string _words;

    private GradedResult(CheckResult counts, string words)
        : base(counts) => _words = words;

    /// <summary>The hardest rule that is needed; null where the ladder does not solve the puzzle, or it has not just one solution.</summary>
    [JsonPropertyOrder(1)]
    public RuleId? Hardest { get; private init; }

    /// <summary>How hard the puzzle is; null where it has not just one solution.</summary>
    [JsonPropertyOrder(2)]
    public GradeFigures? Grade { get; private init; }

    /// <summary>The steps in order, as far as the ladder leads; absent where they were not asked for.</summary>
    [JsonPropertyOrder(3)]
    [JsonIgnore(Condition = JsonIgnoreCondition.WhenWritingNull)]
    public ImmutableArray<SolvingStep>? Steps { get; private init; }

    /// <summary>Grades a checked line.</summary>
    /// <param name="counts">What is known of it.</param>
    /// <param name="ladder">The rules.</param>
    /// <param name="wording">The words.</param>
    /// <param name="withSteps">Whether the steps are wanted as well.</param>
    public static GradedResult Of(CheckResult counts, Ladder ladder, Wording wording, bool withSteps)
    {
        if (counts.Solutions != 1)
            return new(counts, "") { Steps = withSteps ? [] : null };
        var route = Route.From(Board.Parse(counts.Puzzle), ladder);
        var grade = PuzzleGrade.Of(route);
        return new(counts, Words(grade, wording))
        {
            Hardest = grade.Hardest?.Rule.Id,
            Grade = GradeFigures.Of(grade),
            Steps = withSteps ? [.. route.Rounds.SelectMany(round => StepsOf(round, wording))] : null,
        };
    }

    /// <summary>The result as one line for people.</summary>
    public override string ToString() => base.ToString() + _words;

    private static string Words(PuzzleGrade grade, Wording wording)
    {
        var way = $"{grade.Rounds} {(grade.Rounds == 1 ? "round" : "rounds")}, {grade.Gates} of them gates";
        return grade.Work is { } work
            ? $"; {GradeFigures.WordOf(grade)}: work {work}, {(grade.Hardest is { } hardest ? $"up to {wording.NameOf(hardest.Rule.Id)}, " : "")}{way}"
            : $"; {GradeFigures.WordOf(grade)}: the ladder does not solve it, {way}";
    }

    private static IEnumerable<SolvingStep> StepsOf(Round round, Wording wording) => round.Steps.Select(step => new SolvingStep(
        step.Rule, step.Places, step.Removes, wording.HintsFor(round.Board, step).Why.Words.Spoken));

    /// <summary>One step of the way through a puzzle.</summary>
    internal sealed record SolvingStep(RuleId Rule, CandidateSet Places, CandidateSet Removes, string Text);
}
