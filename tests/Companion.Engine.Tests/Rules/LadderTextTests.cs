using System.Globalization;
using System.Text.Json.Nodes;
using System.Text.RegularExpressions;
using Companion.Engine.Proofs;
using Companion.Engine.Rules;
using Companion.Engine.Tests.Proofs;

namespace Companion.Engine.Tests.Rules;

public sealed partial class LadderTextTests
{
    [Fact]
    public void The_shipped_file_has_each_rule_there_is_once_and_every_rung_at_its_place()
    {
        var rungs = ShippedLadder.Ladder.Rungs;

        Assert.Equal(
            Ladder.Whole.Rules.Select(rule => rule.Id.Value).Order(), rungs.Select(rung => rung.Rule.Id.Value).Order());
        Assert.Equal(Enumerable.Range(0, rungs.Length), rungs.Select(rung => rung.Place));
        Assert.All(rungs, rung => Assert.Null(rung.Called));
    }

    [Fact]
    public void The_shipped_families_are_those_of_the_trade_and_all_are_on() => Assert.Equal(
        "singles, locked candidates, subsets, fish, wings, single-digit patterns, chains, almost locked sets, uniqueness, forcing, "
        + "nets",
        string.Join(", ", ShippedLadder.Ladder.Families.Where(family => family.IsOn).Select(family => family.Name)));

    [Fact]
    public void The_rules_that_assume_one_solution_are_just_the_family_uniqueness()
    {
        Assert.Equal(
            ShippedLadder.Ladder.WithoutUniqueness().Rules, ShippedLadder.Ladder.Without(["uniqueness"]).Rules);
        Assert.NotEqual(ShippedLadder.Ladder.Rules, ShippedLadder.Ladder.Without(["uniqueness"]).Rules);
    }

    [Fact]
    public void The_shipped_costs_are_those_that_were_measured()
    {
        var report = File.ReadAllText(Path.Combine(Repository.Root, "tests", "Companion.Benchmarks", "REPORT.md"));
        var measured = CostLine().Matches(report).ToDictionary(line => line.Groups["rule"].Value, line => line.Groups["cost"].Value);

        Assert.All(ShippedLadder.Ladder.Rungs, rung => Assert.Equal(
            measured.GetValueOrDefault(rung.Rule.Id.Value), rung.Cost.ToString(CultureInfo.InvariantCulture)));
    }

    // Not at every rung: a pattern may be quick to follow and yet hard to see.
    [Fact]
    public void The_shipped_costs_rise_broadly_with_the_order()
    {
        var costs = ShippedLadder.Ladder.Rungs.Select(rung => rung.Cost).ToList();
        var pairs = from lower in Enumerable.Range(0, costs.Count)
                    from higher in Enumerable.Range(lower + 1, costs.Count - lower - 1)
                    where costs[lower] != costs[higher]
                    select costs[lower] < costs[higher];

        Assert.InRange(pairs.Average(rises => rises ? 1.0 : 0.0), 0.65, 1.0);
    }

    [Fact]
    public void The_order_the_costs_and_the_families_are_the_files_own()
    {
        var json = JsonNode.Parse(ShippedLadder.Json)!;
        var rungs = json["rungs"]!.AsArray();
        var first = rungs[0]!;
        rungs.RemoveAt(0);
        rungs.Add(first);
        first["cost"] = 77;
        json["families"]!["wings"] = false;

        var ladder = Ladder.Parse(json.ToJsonString());

        Assert.Equal("hidden-single", ladder.Rules[0].Id.Value);
        Assert.Equal(ladder.Rungs.Length - 1, ladder.RungOf(new("full-house")));
        Assert.Equal(77, ladder[new("full-house")].Cost);
        Assert.True(ladder.Has(new("xy-wing")));
        Assert.Equal(ladder.Without(["wings"]).Rules, ladder.AtFirst.Rules);
        Assert.False(ladder.AtFirst.Has(new("xy-wing")));
    }

    [Fact]
    public void A_presenter_may_call_a_rule_by_another_name_everywhere()
    {
        var ladder = Ladder.Parse(With("xy-wing", rung =>
        {
            rung["name"] = "little wing";
            rung["a-name"] = "a little wing";
        }));
        var wording = new Wording(ShippedPhrases.Phrases.Calling(ladder));
        var (board, deduction) = OneOfEachRule.On("xy-wing");
        var hints = wording.HintsFor(board, deduction);

        Assert.Equal("little wing", wording.NameOf(new("xy-wing")));
        Assert.Equal("Look out for a little wing.", hints.What.Words.Spoken);
        Assert.StartsWith("Little wing on ", hints.Which.Words.Written, StringComparison.Ordinal);
        Assert.StartsWith("Little wing on ", hints.Why.Words.Written, StringComparison.Ordinal);
        Assert.Equal("XY-wing", ShippedPhrases.Wording.NameOf(new("xy-wing")));
    }

    [Fact]
    public void A_comma_too_many_and_a_remark_beside_a_line_do_no_harm()
    {
        var json = ShippedLadder.Json
            .Replace("\"rungs\": [", "// the easiest first\n\"rungs\": [", StringComparison.Ordinal)
            .Replace("\"cost\": ", "/* dear */ \"cost\": ", StringComparison.Ordinal);
        json = json[..json.LastIndexOf(']')] + ",]}";

        Assert.Equal(ShippedLadder.Ladder.Rungs, Ladder.Parse(json).Rungs, (one, other) => one.Cost == other.Cost);
    }

    [Fact]
    public void A_rule_that_is_unknown_one_that_is_missing_and_one_that_stands_twice_are_all_named()
    {
        var json = JsonNode.Parse(ShippedLadder.Json)!;
        var rungs = json["rungs"]!.AsArray();
        rungs[3] = rungs[0]!.DeepClone();
        rungs[4]!["rule"] = "clamming";

        Assert.Equal(
            "The ladder cannot be used: 'full-house' stands twice. 'clamming' is not the name of a rule. 'pointing' is missing. "
            + "'claiming' is missing.",
            Refusal(json.ToJsonString()));
    }

    [Theory]
    [InlineData("0")]
    [InlineData("-3")]
    [InlineData("1.5")]
    [InlineData("1001")]
    [InlineData("\"7\"")]
    [InlineData("null")]
    public void A_cost_is_a_whole_number_from_1_to_1000(string cost) => Assert.Equal(
        "The ladder cannot be used: The cost of 'x-wing' must be a whole number from 1 to 1000.",
        Refusal(With("x-wing", rung => rung["cost"] = JsonNode.Parse(cost))));

    [Fact]
    public void A_family_that_is_not_listed_is_named() => Assert.Equal(
        "The ladder cannot be used: 'x-wing' is in the family 'fishes', which 'families' does not have.",
        Refusal(With("x-wing", rung => rung["family"] = "fishes")));

    [Fact]
    public void A_name_without_its_article_is_refused() => Assert.Equal(
        "The ladder cannot be used: 'x-wing' needs both 'name' and 'a-name', or neither.",
        Refusal(With("x-wing", rung => rung["name"] = "square")));

    [Fact]
    public void What_means_nothing_in_a_rung_is_named() => Assert.Equal(
        "The ladder cannot be used: Rung 11 has 'price', which means nothing there.",
        Refusal(With("x-wing", rung => rung["price"] = 3)));

    [Theory]
    [InlineData("no JSON", "The text is not JSON")]
    [InlineData("[]", "The file is no group in braces.")]
    [InlineData("""{ "families": { "fish": 1 }, "rungs": [] }""", "The family 'fish' is either true (on) or false (off).")]
    [InlineData("""{ "families": { "fish": true, "fish": false }, "rungs": [] }""", "fish")]
    [InlineData("""{ "families": {} }""", "'rungs' is the list of the rules, easiest first.")]
    [InlineData("""{ "rungs": [] }""", "'families' says of each family whether it is on, as in { \"wings\": true }.")]
    [InlineData("""{ "families": {}, "rungs": [ "x-wing" ] }""", "Rung 1 is no group in braces.")]
    [InlineData("""{ "families": {}, "rungs": [], "order": [] }""", "The file has 'order', which means nothing there.")]
    public void A_file_of_another_shape_is_refused(string json, string reason) =>
        Assert.Contains(reason, Refusal(json), StringComparison.Ordinal);

    [GeneratedRegex(@"^\| (?<rule>[a-z-]+) \| \d+ \| (its turn|any) \| \d+ \| (?<cost>\d+) \| \d+ \|$", RegexOptions.Multiline)]
    private static partial Regex CostLine();

    private static string Refusal(string json) => Assert.Throws<FormatException>(() => Ladder.Parse(json)).Message;

    private static string With(string rule, Action<JsonNode> change)
    {
        var json = JsonNode.Parse(ShippedLadder.Json)!;
        change(json["rungs"]!.AsArray().Single(rung => rung!["rule"]!.GetValue<string>() == rule)!);
        return json.ToJsonString();
    }
}
