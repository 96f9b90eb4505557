using System.Collections.Immutable;
using Companion.Engine;
using Companion.Engine.Proofs;

namespace Companion.Server.CommandLine;

/// <summary>What <c>why --json</c> writes.</summary>
/// <param name="Grid">The position, 81 characters.</param>
/// <param name="Cell">The cell that was asked about.</param>
/// <param name="Digit">The digit that was asked about.</param>
/// <param name="Answer">
/// What the answer is: <c>stands</c>, <c>filled</c>, <c>seen</c>, or what the only solution says, <c>goes</c> or <c>cannotBe</c>.
/// </param>
/// <param name="Text">The answer as it can be spoken, without the steps.</param>
/// <param name="Proved">Whether the ladder proves it; null where no proof is needed.</param>
/// <param name="Cost">The sum of the steps' costs; null where there is no proof.</param>
/// <param name="UpTo">The last rule that was tried; null where there is a proof or none is needed.</param>
/// <param name="AtOnce">A harder deduction that gives it in one step, or null.</param>
/// <param name="Steps">The steps in order.</param>
internal sealed record WhyResult(
    string Grid,
    Cell Cell,
    Digit Digit,
    string Answer,
    string Text,
    bool? Proved,
    double? Cost,
    RuleId? UpTo,
    ScanResult.Found? AtOnce,
    ImmutableArray<ScanResult.Found> Steps)
{
    /// <summary>The result of a question.</summary>
    /// <param name="board">The position.</param>
    /// <param name="question">The question.</param>
    /// <param name="reason">The answer.</param>
    /// <param name="wording">The words.</param>
    public static WhyResult Of(Board board, Question question, CellReason reason, Wording wording)
    {
        var (from, attribution) = reason switch
        {
            CellReason.Goes goes => (goes.Board, goes.Attribution),
            CellReason.CannotBe cannotBe => (cannotBe.Board, cannotBe.Attribution),
            _ => (board, null),
        };
        var proved = attribution as Attribution.Proved;
        return new(
            BoardText.Write(board),
            question.Asked.Cell,
            question.Asked.Digit,
            NameOf(reason),
            TextOf(question, reason, wording),
            attribution is null ? null : proved is not null,
            proved?.Cost,
            (attribution as Attribution.NotProved)?.UpTo,
            proved?.AtOnce is { } atOnce ? Told(wording.Steps(from, [atOnce])[0]) : null,
            [.. proved is null ? [] : wording.Steps(from, proved.Steps).Select(Told)]);
    }

    // Who asks why the right digit cannot be there has to be told first that it can.
    private static string TextOf(Question question, CellReason reason, Wording wording)
    {
        var why = wording.Why(reason).Spoken;
        return question.IsAgainst && reason is CellReason.Goes
            ? $"{question.Asked.Digit} is not excluded from {question.Asked.Cell}: it is the digit of the only solution. {why}"
            : why;
    }

    private static string NameOf(CellReason reason) => reason switch
    {
        CellReason.Stands => "stands",
        CellReason.Filled => "filled",
        CellReason.Seen => "seen",
        CellReason.Goes => "goes",
        _ => "cannotBe",
    };

    private static ScanResult.Found Told(WhyHint step) => ScanResult.Found.Of(step.Deduction, step.Words.Spoken);
}
