using System.Text.Json.Nodes;
using Companion.Engine.Proofs;
using Companion.Engine.Rules;

namespace Companion.Engine.Tests.Proofs;

public class PhrasesTests
{
    [Fact]
    public void The_shipped_file_has_phrases_for_the_rules_of_the_ladder_and_no_other()
    {
        var rules = JsonNode.Parse(ShippedPhrases.Json)!["rules"]!.AsObject().Select(rule => rule.Key);

        Assert.Equal(Ladder.Whole.Rules.Select(rule => rule.Id.Value).Order(), rules.Order());
    }

    [Fact]
    public void Every_missing_phrase_is_listed()
    {
        var json = JsonNode.Parse(ShippedPhrases.Json)!;
        json["rules"]!["x-wing"]!.AsObject().Remove("why");
        json["lists"]!.AsObject().Remove("and");

        var refusal = Assert.Throws<FormatException>(() => Phrases.Parse(json.ToJsonString()));

        Assert.Equal("The phrases cannot be used: 'lists.and' is missing. 'rules.x-wing.why' is missing.", refusal.Message);
    }

    [Theory]
    [InlineData("rules.x-wing.why", "{digts} go", "'rules.x-wing.why' has no slot 'digts' to fill.")]
    [InlineData("rules.x-wing.why", "{digits", "'rules.x-wing.why': \"{digits\" has a '{' without a '}' after it.")]
    [InlineData("rules.x-wing.why", "digits}", "'rules.x-wing.why': \"digits}\" has a '}' without a '{' before it.")]
    [InlineData(
        "rules.x-wing.why", "{digits:s}",
        "'rules.x-wing.why': \"{digits:s}\" should end in ':or' or in two words such as ':goes/go'.")]
    [InlineData("rules.x-wing.wy", "so", "'rules.x-wing.wy' is not the name of a phrase.")]
    [InlineData("greeting", "hello", "'greeting' is not the name of a phrase.")]
    public void A_phrase_that_cannot_be_used_is_named_with_the_reason(string name, string text, string reason)
    {
        var refusal = Assert.Throws<FormatException>(() => Phrases.Parse(With(name, text)));

        Assert.Equal($"The phrases cannot be used: {reason}", refusal.Message);
    }

    // What a lower grade must not give has no slot there, so that no phrase file can give it away.
    [Theory]
    [InlineData("hints.where.spoken", "digits")]
    [InlineData("hints.where.spoken", "cells")]
    [InlineData("hints.where.written", "rule")]
    [InlineData("hints.what.spoken", "digits")]
    [InlineData("hints.what.written", "cells")]
    [InlineData("rules.naked-pair.name", "digits")]
    [InlineData("rules.naked-pair.a-name", "cells")]
    [InlineData("rules.naked-pair.which", "conclusion")]
    [InlineData("rules.naked-pair.caption", "conclusion")]
    [InlineData("rules.xy-wing.which", "shared-digit")]
    public void A_phrase_has_no_slot_for_what_belongs_to_a_higher_grade(string name, string slot)
    {
        var refusal = Assert.Throws<FormatException>(() => Phrases.Parse(With(name, $"{{{slot}}}")));

        Assert.Contains($"'{name}' has no slot '{slot}' to fill.", refusal.Message, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("not JSON at all", "The text is not JSON")]
    [InlineData("[]", "'' is neither a text nor a group of texts.")]
    [InlineData("""{ "lists": { "and": 7 } }""", "'lists.and' is neither a text nor a group of texts.")]
    [InlineData("""{ "lists": { "and": "a", "and": "b" } }""", "'lists.and' stands twice.")]
    public void A_file_of_another_shape_is_refused(string json, string reason)
    {
        var refusal = Assert.Throws<FormatException>(() => Phrases.Parse(json));

        Assert.Contains(reason, refusal.Message, StringComparison.Ordinal);
    }

    [Fact]
    public void Only_the_rules_asked_for_need_phrases()
    {
        var json = JsonNode.Parse(ShippedPhrases.Json)!;
        json["rules"]!.AsObject().Remove("jellyfish");

        Assert.NotNull(Phrases.Parse(json.ToJsonString(), [new RuleId("x-wing")]));
        Assert.Throws<FormatException>(() => Phrases.Parse(json.ToJsonString(), [new RuleId("jellyfish")]));
    }

    private static string With(string name, string text)
    {
        var json = JsonNode.Parse(ShippedPhrases.Json)!;
        var path = name.Split('.');
        var group = path[..^1].Aggregate(json, (node, part) => node[part]!);
        group[path[^1]] = text;
        return json.ToJsonString();
    }
}
