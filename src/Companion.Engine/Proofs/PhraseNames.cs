namespace Companion.Engine.Proofs;

/// <summary>The phrases that every phrase file must have, and the slots that each may use.</summary>
/// <remarks>
/// The phrases of a lower grade have no slot for what belongs to a higher one, so that no file can give it away.
/// </remarks>
internal static class PhraseNames
{
    private static readonly string[] NoSlot = [];

    private static readonly string[] PatternSlots =
    [
        "digits", "cells", "places", "pivot", "pincers", "fins", "ends", "between", "start", "through", "first-colour", "second-colour",
        "floor", "roof", "subset", "sets",
        "houses", "house-kind", "house-kinds", "lines", "blocks", "cover", "cover-kind", "cover-kinds", "way",
    ];

    private static readonly string[] ProofSlots =
    [
        .. PatternSlots, "first-pincer", "second-pincer", "first-digit", "second-digit", "shared-digit",
        "placed-digits", "removed-digits", "kept-digits", "floor-digits", "chain", "not-both", "net", "loop", "with-sets", "with-fish",
        "conclusion",
    ];

    private static readonly string[] CandidateSlots = ["digits", "cells"];

    /// <summary>The phrases outside the rules.</summary>
    internal static IReadOnlyDictionary<string, string[]> General { get; } = new Dictionary<string, string[]>([.. Words(), .. AskPhrases.All, .. WhyPhrases.All, .. ChapterPhrases.All])
    {
        ["cells.one"] = ["row", "column"],
        ["cells.in-row"] = ["row", "columns"],
        ["cells.in-column"] = ["column", "rows"],
        ["houses.one"] = ["kind", "number"],
        ["houses.several"] = ["kinds", "numbers"],
        ["chains.whole"] = ["start", "steps"],
        ["chains.is"] = CandidateSlots,
        ["chains.is-not"] = CandidateSlots,
        ["chains.it-is"] = ["digits"],
        ["chains.it-is-not"] = ["digits"],
        ["chains.group-is"] = CandidateSlots,
        ["chains.group-is-not"] = CandidateSlots,
        ["nets.suppose"] = CandidateSlots,
        ["nets.then"] = ["step"],
        ["nets.but"] = ["end"],
        ["nets.hidden"] = ["digits", "places", "houses"],
        ["nets.naked"] = CandidateSlots,
        ["nets.rule"] = ["rule", "cells", "conclusion"],
        ["nets.in-turn"] = ["digits", "cells", "steps"],
        ["nets.no-digit"] = ["cells"],
        ["nets.no-place"] = ["digits", "houses"],
        ["hints.where.spoken"] = ["region"],
        ["hints.where.written"] = ["region"],
        ["hints.what.spoken"] = ["rule"],
        ["hints.what.written"] = ["rule"],
        ["hints.why.written"] = ["pattern", "conclusion"],
        ["hints.unseen.spoken"] = ["gone"],
        ["hints.unseen.written"] = ["gone"],
        ["conclusions.places.spoken"] = CandidateSlots,
        ["conclusions.places.written"] = CandidateSlots,
        ["conclusions.removes.spoken"] = CandidateSlots,
        ["conclusions.removes.written"] = CandidateSlots,
        ["conclusions.gone.spoken"] = CandidateSlots,
        ["conclusions.gone.written"] = CandidateSlots,
    };

    /// <summary>The phrases of each rule, by the last part of their names.</summary>
    internal static IReadOnlyDictionary<string, string[]> OfRule { get; } = new Dictionary<string, string[]>
    {
        ["name"] = NoSlot,
        ["a-name"] = NoSlot,
        ["explanation"] = NoSlot,
        ["which"] = PatternSlots,
        ["caption"] = [.. PatternSlots, "name"],
        ["why"] = ProofSlots,
    };

    private static Dictionary<string, string[]> Words()
    {
        string[] names =
        [
            .. Digit.All.Select(digit => $"digits.{digit}"),
            .. Enumerable.Range(1, 3).SelectMany(number => new[] { $"bands.{number}", $"stacks.{number}" }),
            .. Enum.GetValues<HouseKind>().SelectMany(kind => new[] { NounOf(kind, one: true), NounOf(kind, one: false) }),
            "lists.and", "lists.or", "lists.comma", "lists.comma-and", "lists.comma-or", "lists.semicolon", "lists.together",
            "chains.so", "chains.next",
        ];
        return names.ToDictionary(name => name, _ => NoSlot);
    }

    /// <summary>The name of the phrase for one house or for several houses of a kind.</summary>
    internal static string NounOf(HouseKind kind, bool one) => $"houses.{kind.ToString().ToLowerInvariant()}{(one ? "" : "s")}";
}
