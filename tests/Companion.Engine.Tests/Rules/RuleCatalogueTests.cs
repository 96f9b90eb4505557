using System.Text.RegularExpressions;
using System.Xml.Linq;
using Companion.Engine.Rules;

namespace Companion.Engine.Tests.Rules;

/// <summary>What holds of every rule of the ladder, whichever it is.</summary>
public sealed partial class RuleCatalogueTests
{
    // The parts that a rule's description must have, beside its first sentence and a picture.
    private static readonly string[] _parts = ["Why it holds:", "All of them:", "Source:"];

    public static TheoryData<string> Rules => [.. Ladder.Whole.Rules.Select(rule => rule.Id.Value)];

    [Fact]
    public void Every_rule_there_is_stands_on_the_ladder_once()
    {
        var rules = typeof(IRule).Assembly.GetTypes().Where(type => type.IsClass && type.IsAssignableTo(typeof(IRule)));

        Assert.Equal(
            rules.Select(rule => rule.Name).Order(StringComparer.Ordinal),
            Ladder.Whole.Rules.Select(rule => rule.GetType().Name).Order(StringComparer.Ordinal));
        Assert.Equal(Ladder.Whole.Rules.Length, Ladder.Whole.Rules.Select(rule => rule.Id).Distinct().Count());
    }

    [Theory]
    [MemberData(nameof(Rules))]
    public void A_rule_is_sealed_and_called_like_its_class(string name)
    {
        var type = Rule(name).GetType();

        Assert.True(type.IsSealed);
        Assert.Equal(type.Name, string.Concat(name.Split('-').Select(Capital)), ignoreCase: true);
        Assert.Matches(KebabCase(), name);
    }

    [Theory]
    [MemberData(nameof(Rules))]
    public void A_rule_says_what_it_finds_why_it_holds_what_all_of_them_are_and_where_it_comes_from(string name)
    {
        var type = Rule(name).GetType();
        var text = XDocument.Load(Path.ChangeExtension(type.Assembly.Location, ".xml"))
            .Descendants("member")
            .Single(member => member.Attribute("name")!.Value == $"T:{type.FullName}");

        Assert.Contains("Finds", text.Element("summary")!.Value, StringComparison.Ordinal);
        Assert.NotEmpty(text.Descendants("code").Single().Value.Trim());
        var paragraphs = text.Descendants("para").Select(paragraph => paragraph.Value.Trim()).ToList();
        Assert.All(_parts, part => Assert.Contains(paragraphs, text => text.StartsWith(part, StringComparison.Ordinal)));
    }

    [Theory]
    [MemberData(nameof(Rules))]
    public void A_rule_has_tests_of_its_own(string name)
    {
        var here = typeof(RuleCatalogueTests);
        var tests = here.Assembly.GetType($"{here.Namespace}.{Rule(name).GetType().Name}Tests");

        Assert.NotNull(tests);
        Assert.Contains(tests.GetMethods(), method => method.IsDefined(typeof(FactAttribute), inherit: false));
    }

    [Theory]
    [MemberData(nameof(Rules))]
    public void A_rule_finds_nothing_on_the_blank_board_and_on_a_full_one(string name)
    {
        var solution = Puzzle.Parse(OwnPuzzles.All[0]).Solution;

        RuleCheck.FindsNothing(Rule(name), Board.Blank);
        RuleCheck.FindsNothing(Rule(name), Board.Parse(solution.ToString()));
    }

    [Theory]
    [MemberData(nameof(Rules))]
    public void A_rule_finds_nothing_on_a_board_without_a_candidate(string name) =>
        RuleCheck.FindsNothing(Rule(name), Boards.Of([], CandidateSet.Empty));

    [Theory]
    [MemberData(nameof(Rules))]
    public void A_rule_does_no_harm_where_digits_are_wrong(string name)
    {
        var random = new Random(6);
        var oneOf = IsLastResort(name) ? 2_000 : 100;
        foreach (var start in SolvingPath.OwnPositions.Where((_, place) => place % oneOf == 0))
        {
            // Wrong or right, any candidate at all is placed until none is left; dead cells appear on the way.
            for (var board = start.Board; !board.Candidates.IsEmpty; board = board.Place(Any(board.Candidates)))
            {
                foreach (var deduction in RuleCheck.Find(Rule(name), board))
                    DeductionTests.AssertFits(deduction, board);
            }
        }

        Candidate Any(CandidateSet candidates) => candidates.ElementAt(random.Next(candidates.Count));
    }

    [Theory]
    [MemberData(nameof(Rules))]
    public void A_rule_finds_the_same_in_the_same_order_again_and_stops_where_no_more_are_wanted(string name)
    {
        var stopped = 0;
        var boards = IsLastResort(name)
            ? NetPositions.All.Where((_, place) => place % 4 == 0)
            : SolvingPath.OwnPositions.Where((_, place) => place % 5 == 0).Select(position => position.Board);
        foreach (var board in RarePositions.Has(name) ? RarePositions.For(name) : boards)
        {
            var all = RuleCheck.Find(Rule(name), board);
            Assert.Equal(all, RuleCheck.Find(Rule(name), board));
            for (var limit = 1; limit <= Math.Min(all.Count, 3); limit++)
            {
                var some = new Findings(limit);
                Rule(name).Find(board, some);
                Assert.Equal(all.Take(limit), some);
                stopped += all.Count > limit ? 1 : 0;
            }
        }

        if (name != "bivalue-universal-grave") // There is never more than one.
            Assert.True(stopped > 0, "No board had more instances than were wanted.");
    }

    [Theory]
    [MemberData(nameof(Rules))]
    public void A_rule_that_is_no_last_resort_allocates_nothing_where_it_finds_nothing(string name)
    {
        if (IsLastResort(name))
            return;
        var rule = Rule(name);
        var (board, _) = SolvingPath.OwnPositions.First(position => RuleCheck.Find(rule, position.Board).Count == 0);
        var found = new Findings();
        rule.Find(board, found);
        var before = GC.GetAllocatedBytesForCurrentThread();

        rule.Find(board, found);

        Assert.Equal(0, GC.GetAllocatedBytesForCurrentThread() - before);
    }

    private static bool IsLastResort(string name) => Rule(name).Effort == Effort.LastResort;

    private static IRule Rule(string name) => Ladder.Whole.Rules.Single(rule => rule.Id.Value == name);

    private static string Capital(string word) => char.ToUpperInvariant(word[0]) + word[1..];

    [GeneratedRegex("^[a-z]+(-[a-z]+)*$")]
    private static partial Regex KebabCase();
}
