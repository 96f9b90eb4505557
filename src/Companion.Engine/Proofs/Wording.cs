namespace Companion.Engine.Proofs;

/// <summary>Puts deductions into words: hints of each grade, conclusions, names of rules.</summary>
/// <param name="phrases">The phrases to make sentences from.</param>
public sealed class Wording(Phrases phrases)
{
    private readonly Names _spoken = new(phrases, spoken: true);
    private readonly Names _written = new(phrases, spoken: false);
    private readonly Names _read = new(phrases, spoken: true, inShort: true);

    /// <summary>The spoken name of a rule, such as <c>naked pair</c>.</summary>
    /// <exception cref="ArgumentException">There are no phrases for the rule.</exception>
    public string NameOf(RuleId rule) => phrases[rule, "name"].Text;

    /// <summary>The rule's name as one is looked for, such as <c>a naked pair</c>.</summary>
    /// <exception cref="ArgumentException">There are no phrases for the rule.</exception>
    public string OneOf(RuleId rule) => phrases[rule, "a-name"].Text;

    /// <summary>Why the rule holds, in one sentence about no board in particular.</summary>
    /// <exception cref="ArgumentException">There are no phrases for the rule.</exception>
    public string Explain(RuleId rule) => phrases[rule, "explanation"].Text;

    /// <summary>The four hints that a deduction gives.</summary>
    /// <param name="board">The board on which it was found; the region to look at depends on what is open there.</param>
    /// <param name="deduction">The deduction.</param>
    /// <exception cref="ArgumentException">There are no phrases for its rule.</exception>
    public Hints HintsFor(Board board, Deduction deduction)
    {
        ArgumentNullException.ThrowIfNull(board);
        ArgumentNullException.ThrowIfNull(deduction);
        var region = WhereToLook.Find(board, deduction);
        return new(Where(region), What(region, deduction.Rule), Which(board, deduction), Why(board, deduction));
    }

    /// <summary>What follows from a deduction, without why: <c>Five comes out of row one column five.</c></summary>
    /// <param name="deduction">The deduction.</param>
    public Saying Conclusion(Deduction deduction)
    {
        ArgumentNullException.ThrowIfNull(deduction);
        return new(Sentence.Capitalize(_spoken.Conclusion(deduction) + "."), _written.Conclusion(deduction));
    }

    /// <summary>Says that a deduction rests on candidates that viewers cannot see to be gone.</summary>
    /// <param name="candidates">The candidates; not empty.</param>
    /// <exception cref="ArgumentException">There are none.</exception>
    public Saying Unseen(in CandidateSet candidates)
    {
        if (candidates.IsEmpty)
            throw new ArgumentException("There is nothing that viewers cannot see.", nameof(candidates));
        return Say("hints.unseen", "gone", _spoken.Statement("gone", candidates), _written.Statement("gone", candidates));
    }

    /// <summary>A phrase that is about no deduction, with its slots filled.</summary>
    /// <param name="phrase">Its name in the file, such as <c>asks.too-soon</c>.</param>
    /// <param name="slots">What goes into its slots; one for which there is nothing stays empty.</param>
    /// <exception cref="KeyNotFoundException">No phrase has this name.</exception>
    public string Fill(string phrase, params ReadOnlySpan<(string Slot, string Text)> slots)
    {
        var fillings = new Dictionary<string, Filling>();
        foreach (var (slot, text) in slots)
            fillings.Add(slot, Filling.One(text));
        return phrases[phrase].Fill(fillings);
    }

    /// <summary>Why a digit is, or cannot be, in a cell, without the steps of a proof.</summary>
    /// <param name="reason">The reason.</param>
    public Saying Why(CellReason reason)
    {
        ArgumentNullException.ThrowIfNull(reason);
        return new(Sentence.Capitalize(Aloud.Of(reason)), InShort.Of(reason));
    }

    /// <summary>Why a deduction holds, with what follows from it.</summary>
    /// <param name="deduction">The deduction.</param>
    /// <exception cref="ArgumentException">There are no phrases for its rule.</exception>
    public Saying Why(Deduction deduction)
    {
        ArgumentNullException.ThrowIfNull(deduction);
        var written = phrases["hints.why.written"].Fill(new Dictionary<string, Filling>
        {
            ["pattern"] = Filling.One(Caption(deduction)),
            ["conclusion"] = Filling.One(_written.Conclusion(deduction)),
        });
        return new(Reasoning(deduction, _spoken), written);
    }

    /// <summary>Why a deduction holds in whole sentences to be read: as they are spoken, but with digits and cells in short.</summary>
    /// <param name="deduction">The deduction.</param>
    /// <exception cref="ArgumentException">There are no phrases for its rule.</exception>
    public string ToRead(Deduction deduction)
    {
        ArgumentNullException.ThrowIfNull(deduction);
        return Reasoning(deduction, _read);
    }

    /// <summary>How something follows: <c>It follows in three steps, the hardest an XY-wing.</c></summary>
    /// <param name="attribution">The proof, or that the ladder has none.</param>
    public Saying How(Attribution attribution)
    {
        ArgumentNullException.ThrowIfNull(attribution);
        return new(Sentence.Capitalize(Aloud.Of(attribution)), InShort.Of(attribution));
    }

    /// <summary>Each step of a proof with why it holds, in order.</summary>
    /// <param name="board">The board from which it is proved.</param>
    /// <param name="steps">The steps; each is open on the board after the steps before it.</param>
    public IReadOnlyList<WhyHint> Steps(Board board, IEnumerable<Deduction> steps)
    {
        ArgumentNullException.ThrowIfNull(board);
        ArgumentNullException.ThrowIfNull(steps);
        var told = new List<WhyHint>();
        foreach (var step in steps)
        {
            told.Add(Why(board, step));
            board = board.Apply(step);
        }

        return told;
    }

    private WhyWords Aloud => new(phrases, _spoken, "spoken");

    private WhyWords InShort => new(phrases, _written, "written");

    private WhereHint Where(Region region) =>
        new(region, Say("hints.where", "region", _spoken.Region(region), _written.Region(region)));

    private WhatHint What(Region region, RuleId rule)
    {
        var name = phrases[rule, "a-name"].Text;
        return new(region, rule, NameOf(rule), Say("hints.what", "rule", name, name));
    }

    private WhichHint Which(Board board, Deduction deduction)
    {
        var pattern = Pattern.WithoutConclusion(deduction);
        var spoken = phrases[deduction.Rule, "which"].Fill(Slots.Of(pattern, _spoken));
        return new(pattern, pattern.StandingOn(board), new(Sentence.Capitalize(spoken), Caption(deduction)));
    }

    private WhyHint Why(Board board, Deduction deduction) => new(deduction, Pattern.Of(deduction).StandingOn(board), Why(deduction));

    private string Reasoning(Deduction deduction, Names names)
    {
        var slots = Slots.Of(deduction, names);
        slots["conclusion"] = Filling.One(names.Conclusion(deduction));
        return Sentence.Capitalize(phrases[deduction.Rule, "why"].Fill(slots));
    }

    private string Caption(Deduction deduction)
    {
        var slots = Slots.Of(Pattern.WithoutConclusion(deduction), _written);
        slots["name"] = Filling.One(NameOf(deduction.Rule));
        return Sentence.Capitalize(phrases[deduction.Rule, "caption"].Fill(slots));
    }

    private Saying Say(string phrase, string slot, string spoken, string written) => new(
        Sentence.Capitalize(phrases[$"{phrase}.spoken"].Fill(new Dictionary<string, Filling> { [slot] = Filling.One(spoken) })),
        phrases[$"{phrase}.written"].Fill(new Dictionary<string, Filling> { [slot] = Filling.One(written) }));
}
