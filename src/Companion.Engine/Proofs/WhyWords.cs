namespace Companion.Engine.Proofs;

/// <summary>Says why in one form, aloud or written.</summary>
/// <param name="phrases">The phrases.</param>
/// <param name="names">The names of digits and cells in that form.</param>
/// <param name="form">The last part of the phrases' names.</param>
internal sealed class WhyWords(Phrases phrases, Names names, string form)
{
    /// <summary>The reason without the steps of its proof.</summary>
    internal string Of(CellReason reason) => reason switch
    {
        CellReason.Stands stands => About(stands.IsGiven ? "given" : "stands", stands.Asked),
        CellReason.Filled filled => About("filled", filled.Asked, ("holder", names.Digits(DigitSet.Of(filled.Holder)))),
        CellReason.Seen seen => About("seen", seen.Asked, ("by", names.Cells([seen.By]))),
        CellReason.Goes goes => Fact(About("stands", goes.Asked).TrimEnd('.'), goes.Attribution),
        CellReason.CannotBe cannotBe => Fact(About("cannot-be", cannotBe.Asked), cannotBe.Attribution),
        _ => throw new ArgumentException($"There are no words for {reason}.", nameof(reason)),
    };

    /// <summary>How something follows: <c>It follows in three steps, the hardest an XY-wing.</c></summary>
    internal string Of(Attribution attribution) => attribution switch
    {
        Attribution.NotProved notProved => Fill("not-proved", ("rule", One(phrases[notProved.UpTo, "name"].Text))),
        Attribution.Proved { AtOnce: { } alone } proved =>
            Fill("at-once", ("how", One(How(proved))), ("rule", One(phrases[alone.Rule, "a-name"].Text))),
        Attribution.Proved proved => How(proved),
        _ => throw new ArgumentException($"There are no words for {attribution}.", nameof(attribution)),
    };

    private string How(Attribution.Proved proved) => proved.Steps.Length == 0
        ? Fill("already")
        : Fill(
            proved.Steps.Length == 1 ? "one" : "several",
            ("rule", One(phrases[proved.Hardest, "a-name"].Text)),
            ("steps", One(names.Count(proved.Steps.Length))));

    private string Fact(string conclusion, Attribution attribution) =>
        Fill("fact", ("conclusion", One(conclusion)), ("how", One(Of(attribution))));

    private string About(string phrase, Candidate asked, params ReadOnlySpan<(string Slot, Filling Text)> more) => Fill(
        phrase, [("digits", names.Digits(DigitSet.Of(asked.Digit))), ("cells", names.Cells([asked.Cell])), .. more]);

    private string Fill(string phrase, params ReadOnlySpan<(string Slot, Filling Text)> slots)
    {
        var fillings = new Dictionary<string, Filling>();
        foreach (var (slot, text) in slots)
            fillings.Add(slot, text);
        return phrases[$"why.{phrase}.{form}"].Fill(fillings);
    }

    private static Filling One(string text) => Filling.One(text);
}
