using System.Globalization;
using Companion.Engine.Planning;
using Companion.Engine.Proofs;
using Companion.Server.Planning;
using Companion.Session.Chapters;

namespace Companion.Server.AfterShow;

/// <summary>The title of a chapter: <c>Pointing 1s in block 8</c>, <c>XY-wing, pivot r5c5</c>, <c>Singles in the left stack</c>.</summary>
internal static class ChapterTitle
{
    /// <summary>The title.</summary>
    /// <param name="topic">What the chapter is about.</param>
    /// <param name="wording">The words.</param>
    public static string Of(Topic topic, Wording wording) => topic switch
    {
        Topic.Loaded { Title: { Length: > 0 } title } => wording.Fill("chapters.puzzle", ("title", title)),
        Topic.Loaded => wording.Fill("chapters.untitled"),
        Topic.Solved => wording.Fill("chapters.solved"),
        Topic.Told { Passage.Theme: Theme.OfRule or Theme.Turn, Steps: [var step] } => OfStep(step, wording),
        Topic.Told { Passage.Theme: Theme.OfRule same, Steps.Length: var count } => wording.Fill(
            "chapters.several", ("rule", NameOf(same.Rule, wording)), ("number", count.ToString(CultureInfo.InvariantCulture))),
        Topic.Told told => PassageTitle.Of(told.Passage, wording),
        _ => wording.Fill("chapters.beginning"),
    };

    private static string OfStep(Deduction step, Wording wording)
    {
        var rule = ("rule", NameOf(step.Rule, wording));
        var pivots = step.Cells.Where(cell => cell.Role == Role.Pivot).Select(cell => cell.Cell.ToString()).ToList();
        if (pivots is [var pivot])
            return wording.Fill("chapters.with-pivot", rule, ("pivot", pivot));
        var house = step.Houses.Count == 1 ? ("house", $"{step.Houses.First().Kind.ToString().ToLowerInvariant()} {step.Houses.First().Number}") : default;
        return (step.Digits.Count, step.Houses.Count) switch
        {
            (1, 1) => wording.Fill("chapters.of-digit-in-house", rule, ("digit", step.Digits.First.ToString()), house),
            (1, _) => wording.Fill("chapters.of-digit", rule, ("digit", step.Digits.First.ToString())),
            (_, 1) => wording.Fill("chapters.in-house", rule, house),
            _ => wording.Fill("chapters.of-rule", rule),
        };
    }

    private static string NameOf(RuleId rule, Wording wording) =>
        wording.NameOf(rule) is var name ? char.ToUpperInvariant(name[0]) + name[1..] : "";
}
