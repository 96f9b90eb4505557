using System.Text.RegularExpressions;
using Companion.Engine.Proofs;

namespace Companion.Engine.Tests.Proofs;

public class WordingTests
{
    private static readonly Dictionary<string, string> RuleWords = ReadRuleWords();

    public static TheoryData<string> Rules => [.. OneOfEachRule.Drawn.Keys, .. OneOfEachRule.AssumingOneSolution.Keys];

    [Theory]
    [MemberData(nameof(Rules))]
    public void Each_rule_has_its_words(string rule)
    {
        var (board, deduction) = OneOfEachRule.On(rule);
        var hints = ShippedPhrases.Wording.HintsFor(board, deduction);

        var said = Enum.GetValues<Grade>().SelectMany(grade => new[] { hints[grade].Words.Spoken, hints[grade].Words.Written });

        Assert.Equal(RuleWords[rule], string.Join('\n', said));
    }

    [Theory]
    [MemberData(nameof(Rules))]
    public void To_be_read_it_is_the_sentences_that_are_spoken_with_digits_and_cells_in_short(string rule)
    {
        var (board, deduction) = OneOfEachRule.On(rule);
        var (spoken, read) = (ShippedPhrases.Wording.HintsFor(board, deduction).Why.Words.Spoken, ShippedPhrases.Wording.ToRead(deduction));

        Assert.DoesNotMatch("(?i)(rows?|columns?|blocks?) (one|two|three|four|five|six|seven|eight|nine)", read);
        Assert.Equal(WithoutNames(spoken), WithoutNames(read));
        Assert.Superset(
            Regex.Matches(ShippedPhrases.Wording.Conclusion(deduction).Written, @"r\dc\d").Select(name => name.Value).ToHashSet(),
            Regex.Matches(read, @"r\dc\d").Select(name => name.Value).ToHashSet());
    }

    [Theory]
    [InlineData(
        "xy-wing",
        "The pivot, r5c3, is 2 or 5. If it is 2, r5c8 has to be 8; if it is 5, r4c1 has to be 8. Either way a pincer is 8, and a cell that "
            + "sees both pincers cannot be. So 8 comes out of r4c7, r4c9 and r5c2.")]
    [InlineData(
        "pointing",
        "In block 1, every place left for 5 lies in row 2. Whichever of them takes it, that is the 5 of the row, so 5 comes out of r2c6 and r2c9.")]
    [InlineData(
        "grouped-chain",
        "If r1c1 is not 1, then one of r1c7, r1c8 and r1c9 is 1, so r3c9 is not 1, so it is 5, so r7c9 is not 5, so r7c1 is 5. So one end of "
            + "the chain is true in any case, and 1 comes out of r7c1, and 5 comes out of r1c1.")]
    [InlineData(
        "forcing-net",
        "Suppose r1c1 were 1. Then r1c4 can only be 2. Then in row 7, 2 has nowhere left to go but r7c2. Then r4c1 can only be 3. But then "
            + "nothing is left for r4c2. So 1 comes out of r1c1.")]
    public void Why_it_holds_can_be_read(string rule, string read) =>
        Assert.Equal(read, ShippedPhrases.Wording.ToRead(OneOfEachRule.On(rule).Deduction));

    [Theory]
    [InlineData("removes r1c1=1", "One comes out of row one column one.", "1 out of r1c1")]
    [InlineData("removes r1c1=12", "One and two come out of row one column one.", "1 and 2 out of r1c1")]
    [InlineData("removes r1c1=1 r5c5=1", "One comes out of row one column one and row five column five.", "1 out of r1c1, r5c5")]
    [InlineData("removes r1c1=1 r1c5=1", "One comes out of row one columns one and five.", "1 out of r1c1, r1c5")]
    [InlineData("removes r1c1=1 r4c1=1", "One comes out of column one rows one and four.", "1 out of r1c1, r4c1")]
    [InlineData("removes r1c1=12 r4c1=12", "One and two come out of column one rows one and four.", "1 and 2 out of r1c1, r4c1")]
    [InlineData(
        "removes r1c1=12 r4c1=1", "One comes out of column one rows one and four, and two comes out of row one column one.",
        "1 out of r1c1, r4c1; 2 out of r1c1")]
    [InlineData(
        "removes r1c1=1 r1c2=1 r4c4=1 r8c8=1",
        "One comes out of row one columns one and two, row four column four, and row eight column eight.",
        "1 out of r1c1, r1c2, r4c4, r8c8")]
    [InlineData("places r1c1=1", "Row one column one is one.", "r1c1 is 1")]
    [InlineData("places r1c1=1 r2c5=1", "Row one column one and row two column five are one.", "r1c1, r2c5 are 1")]
    [InlineData(
        "places r1c1=1 removes r5c5=2", "Row one column one is one, and two comes out of row five column five.",
        "r1c1 is 1; 2 out of r5c5")]
    public void A_conclusion_is_said_in_as_few_clauses_as_it_needs(string concluded, string spoken, string written)
    {
        var deduction = DrawnDeduction.Read($"own 1 single r9c9 {concluded}");

        Assert.Equal(new Saying(spoken, written), ShippedPhrases.Wording.Conclusion(deduction));
    }

    [Fact]
    public void A_deduction_that_rests_on_unseen_steps_says_so()
    {
        var unseen = CandidateSet.Parse("r1c2=5 r1c3=5");

        var saying = ShippedPhrases.Wording.Unseen(unseen);

        Assert.Equal(
            new Saying(
                "This builds on something the picture does not show yet: five is gone from row one columns two and three.",
                "Not shown yet: 5 gone from r1c2, r1c3"),
            saying);
        Assert.Throws<ArgumentException>(() => ShippedPhrases.Wording.Unseen(CandidateSet.Empty));
    }

    [Fact]
    public void A_rule_without_phrases_is_refused_by_name()
    {
        var refusal = Assert.Throws<ArgumentException>(() => ShippedPhrases.Wording.NameOf(new RuleId("no-such-rule")));

        Assert.Contains("no-such-rule", refusal.Message, StringComparison.Ordinal);
    }

    [Fact]
    public void A_name_and_an_explanation_stand_for_every_rule()
    {
        foreach (var rule in Rules.Select(rule => new RuleId(rule)))
        {
            Assert.Matches("^[a-zA-Z -]+$", ShippedPhrases.Wording.NameOf(rule));
            Assert.Matches(@"^[A-Z][^{}]+\.$", ShippedPhrases.Wording.Explain(rule));
        }
    }

    private static string WithoutNames(string text) => Regex.Replace(
        Regex.Replace(text.ToLowerInvariant(), @"\b(r\dc\d|\d|one|two|three|four|five|six|seven|eight|nine|rows?|columns?|blocks?|and|or)\b|,", ""),
        " +",
        " ");

    // A section for each rule, headed "# rule", after a paragraph about the file.
    private static Dictionary<string, string> ReadRuleWords() =>
        File.ReadAllText(Path.Combine(Repository.Root, "tests", "Companion.Engine.Tests", "Proofs", "RuleWords.txt"))
            .ReplaceLineEndings("\n")
            .Split("\n# ")
            .Skip(1)
            .Select(section => section.Replace("\n    ", " ", StringComparison.Ordinal).TrimEnd().Split('\n', count: 2))
            .ToDictionary(section => section[0], section => section[1]);
}
