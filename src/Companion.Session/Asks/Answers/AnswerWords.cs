using System.Collections.Immutable;
using System.Globalization;
using Companion.Engine;
using Companion.Engine.Proofs;

namespace Companion.Session.Asks.Answers;

/// <summary>Puts answers into the words of a chat.</summary>
/// <param name="wording">The phrases.</param>
/// <param name="prefix">What stands before the words that viewers write.</param>
public sealed class AnswerWords(Wording wording, string prefix)
{
    /// <summary>
    /// The lines of an answer, the first with the names of those who asked: one line, for all of a deduction a second that
    /// explains its rule, none for what is only counted.
    /// </summary>
    public ImmutableArray<string> LinesOf(Answered answered)
    {
        ArgumentNullException.ThrowIfNull(answered);
        if (TextOf(answered.Answer) is not { } text)
            return [];
        var whole = answered.Names.IsEmpty
            ? Say("to-many", ("number", Number(answered.Viewers.Length)), ("answer", text))
            : Say("to", ("names", Names(answered.Names)), ("answer", text));
        return [.. ChatLines.Of(whole), .. ExplanationOf(answered.Answer) is { } more ? ChatLines.Of(more) : []];
    }

    /// <summary>
    /// What an answer says on a page, where it is chosen with a button and not written: one paragraph, for all of a deduction a second
    /// that explains its rule, none where nothing is said.
    /// </summary>
    public ImmutableArray<string> ParagraphsOf(Answer answer)
    {
        var text = answer switch
        {
            CellFilled filled => Say("filled-on-page", ("cell", filled.Cell.ToString())),
            Counted => Say("counted"),
            _ => TextOf(answer),
        };
        return [.. new[] { text, ExplanationOf(answer) }.OfType<string>()];
    }

    /// <summary>What an answer says, without whom it is for; null for what is only counted.</summary>
    public string? TextOf(Answer answer) => answer switch
    {
        HintGiven { IsMissingStep: true } first => Say("missing-step", ("hint", first.Hint.Words.Written)),
        HintGiven given => given.Hint.Words.Written,
        NothingOpen { Cell: { } cell } => Say("nothing-at", ("cell", cell.ToString())),
        NothingOpen => Say("nothing"),
        CellFilled filled => Say("filled", ("cell", filled.Cell.ToString()), ("prefix", prefix)),
        NoFurther no => Say("no-further", ("grade", Number((int)no.Highest))),
        AllGiven => Say("all-given"),
        TooSoon soon => Say("too-soon", ("seconds", Number((int)Math.Ceiling(soon.Wait.TotalSeconds)))),
        WhyFollows { StepsBefore: 0 } why => why.Hint.Words.Written,
        WhyFollows why => Say("why-after", ("number", Number(why.StepsBefore)), ("hint", why.Hint.Words.Written)),
        WhyGiven given => Say("why-given", ("cell", given.Cell.ToString())),
        WhyOpen open => Say("why-open", ("cell", open.Cell.ToString())),
        WhyUnknown unknown => Say("why-unknown", ("cell", unknown.Cell.ToString())),
        DigitsLeft left => LeftOf(left),
        PuzzleNamed named => CreditWords.Of(named.Credit, wording),
        HowToAsk how => Say($"how.{how.Word.ToString().ToLowerInvariant()}", ("prefix", prefix)),
        _ => null,
    };

    // Why the rule holds, which the written form of a whole deduction leaves out.
    private string? ExplanationOf(Answer answer) => answer switch
    {
        HintGiven { Hint: WhyHint hint } => wording.Explain(hint.Deduction.Rule),
        WhyFollows why => wording.Explain(why.Hint.Deduction.Rule),
        _ => null,
    };

    private string LeftOf(DigitsLeft left)
    {
        var parts = Digit.All.Where(digit => left.Left[digit.Index] > 0).Select(digit => Say(
            "left-of-digit", ("digit", digit.ToString()), ("number", Number(left.Left[digit.Index])))).ToList();
        return parts.Count == 0 ? Say("left-none") : Say("left", ("digits", string.Join(", ", parts)));
    }

    private string Names(ImmutableArray<string> names) =>
        string.Join(", ", names.Select(name => Say("name", ("name", ViewerName.Of(name)))));

    private string Say(string phrase, params ReadOnlySpan<(string Slot, string Text)> slots) =>
        wording.Fill($"asks.{phrase}", slots);

    private static string Number(int number) => number.ToString(CultureInfo.InvariantCulture);
}
