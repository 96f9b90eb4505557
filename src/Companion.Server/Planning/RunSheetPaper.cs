using System.Collections.Immutable;
using Companion.Drawing.Paper;
using Companion.Engine.Planning;
using Companion.Engine.Proofs;

namespace Companion.Server.Planning;

/// <summary>A run sheet as it is printed: with the puzzle at its head and a figure of each featured step.</summary>
internal static class RunSheetPaper
{
    /// <summary>The blocks of the document.</summary>
    /// <param name="sheet">The sheet.</param>
    /// <param name="plan">The route that it tells.</param>
    /// <param name="notes">What is to be said at each step, in the order of the sheet; empty where nothing is.</param>
    /// <param name="wording">The words.</param>
    public static ImmutableArray<PaperBlock> Of(RunSheet sheet, RunPlan plan, ImmutableArray<string> notes, Wording wording) =>
    [
        new FigureWithWords(Figure.Of(plan.Start, withMarks: false), [.. sheet.Featured.Select(RunSheetText.Of), End(sheet)]),
        .. sheet.Passages.SelectMany(passage => Passage(passage, sheet, plan, notes, wording)),
        .. Worth(sheet),
    ];

    /// <summary>The title of the document.</summary>
    /// <param name="sheet">The sheet.</param>
    public static string TitleOf(RunSheet sheet) => $"Run sheet, {RunSheetText.Clock(sheet.Seconds)}";

    private static string End(RunSheet sheet) => sheet.IsComplete
        ? $"The grid is full after step {sheet.Steps.Length}, at {RunSheetText.Clock(sheet.Seconds)}."
        : $"The ladder leads no further than step {sheet.Steps.Length}, at {RunSheetText.Clock(sheet.Seconds)}.";

    private static IEnumerable<PaperBlock> Passage(
        RunSheet.PassageLine passage, RunSheet sheet, RunPlan plan, ImmutableArray<string> notes, Wording wording)
    {
        yield return new Heading(passage.Title, RunSheetText.Clock(passage.At), RunSheetText.Clock(passage.Seconds));
        yield return new Steps(
            passage.First,
            [
                .. sheet.Steps[(passage.First - 1)..passage.Last].Select(step => new Step(
                    step.Text,
                    step.IsGate ? "gate" : "",
                    notes[step.Number - 1],
                    step.IsFeatured ? Featured(plan.Steps[step.Number - 1], wording) : null)),
            ]);
    }

    private static Figure Featured(PlannedStep planned, Wording wording) =>
        Figure.Of(planned.Board, wording.HintsFor(planned.Board, planned.Deduction).Why, withMarks: false);

    private static IEnumerable<PaperBlock> Worth(RunSheet sheet)
    {
        if (sheet.TalkingPoints.IsEmpty)
            yield break;
        yield return new Heading("Worth saying, the rarest first");
        yield return new Points(
        [
            .. sheet.TalkingPoints.Take(RunSheetText.MostPoints)
                .Select(point => point.Step is { } step ? $"Step {step}: {point.Text}" : point.Text),
        ]);
    }
}
