using System.Xml.Linq;
using Companion.Drawing.Pictures;
using Companion.Drawing.Stills;
using Companion.Engine;
using Companion.Engine.Planning;
using Companion.Engine.Proofs;
using Companion.Session.Views;
using Theme = Companion.Drawing.Colours.Theme;

namespace Companion.Server.Planning;

/// <summary>A run sheet as one page to read or print: nothing in it is fetched from elsewhere.</summary>
internal static class RunSheetHtml
{
    private const string Style =
        """
        body { font: 11pt/1.45 "DejaVu Sans", Verdana, sans-serif; color: #000; background: #fff; max-width: 46em; margin: 2em auto; padding: 0 1em; }
        h2 { font-size: 1.1em; margin: 1.2em 0 .3em; border-top: 1px solid #000; padding-top: .4em; break-after: avoid; }
        h2 time { display: inline-block; min-width: 3.5em; font-variant-numeric: tabular-nums; }
        h2 small { float: right; font-weight: normal; }
        ol { margin: 0; padding-left: 3.5em; }
        b.sign { border: 2px solid #000; padding: 0 .3em; }
        figure { margin: .5em 0 0; break-inside: avoid; }
        img { width: 100%; height: auto; }
        @page { margin: 18mm; }
        """;

    // Wide, so that the board has the height to itself.
    private static readonly StillOptions Picture = new(1280, 720, Theme.Light);

    /// <summary>The page.</summary>
    /// <param name="sheet">The sheet.</param>
    /// <param name="plan">The route that it tells.</param>
    /// <param name="wording">The words.</param>
    public static string Of(RunSheet sheet, RunPlan plan, Wording wording)
    {
        var title = $"Run sheet, {RunSheetText.Clock(sheet.Seconds)}";
        var html = new XElement(
            "html",
            new XAttribute("lang", "en"),
            new XElement("head", new XElement("meta", new XAttribute("charset", "utf-8")), new XElement("title", title), new XElement("style", Style)),
            new XElement(
                "body",
                new XElement("h1", title),
                sheet.Featured.Select(featured => new XElement("p", RunSheetText.Of(featured))),
                sheet.Passages.Select(passage => Passage(passage, sheet, plan, wording)),
                sheet.IsComplete ? null : new XElement("p", "The ladder leads no further."),
                Points(sheet)));
        return "<!DOCTYPE html>\n" + html.ToString(SaveOptions.DisableFormatting);
    }

    private static XElement Passage(RunSheet.PassageLine passage, RunSheet sheet, RunPlan plan, Wording wording) => new(
        "section",
        new XElement(
            "h2",
            new XElement("time", RunSheetText.Clock(passage.At)),
            passage.Title,
            new XElement("small", RunSheetText.Clock(passage.Seconds))),
        new XElement(
            "ol",
            new XAttribute("start", passage.First),
            sheet.Steps[(passage.First - 1)..passage.Last].Select(step => new XElement(
                "li",
                step.IsGate ? new XElement("b", new XAttribute("class", "sign"), "gate") : null,
                step.IsGate ? " " : null,
                step.Text,
                step.IsFeatured ? Figure(plan.Steps[step.Number - 1], step, wording) : null))));

    private static XElement Figure(PlannedStep planned, RunSheet.StepLine step, Wording wording)
    {
        var hint = wording.HintsFor(planned.Board, planned.Deduction).Why;
        var cells = CellSet.All.Select(cell => new StageCell(
            planned.Board.DigitAt(cell), planned.Board.Givens.Contains(cell), null, DigitSet.Empty, DigitSet.Empty));
        var png = Still.Png(new(0, new("", "", ""), [.. cells], null, null), PictureOf.Hint(hint), Picture);
        return new(
            "figure",
            new XElement(
                "img",
                new XAttribute("alt", step.Short),
                new XAttribute("src", $"data:image/png;base64,{Convert.ToBase64String(png)}")));
    }

    private static XElement? Points(RunSheet sheet) => sheet.TalkingPoints.IsEmpty ? null : new(
        "section",
        new XElement("h2", "Worth saying, the rarest first"),
        new XElement("ul", sheet.TalkingPoints.Take(RunSheetText.MostPoints).Select(point =>
            new XElement("li", point.Step is { } step ? $"Step {step}: {point.Text}" : point.Text))));
}
