using Companion.Engine.Proofs;

namespace Companion.Engine.Tests.Proofs;

public class TemplateTests
{
    [Theory]
    [InlineData("no slot", "no slot")]
    [InlineData("{cells}", "a and b")]
    [InlineData("{cells:or} {cells:goes/go}.", "a or b go.")]
    [InlineData("{digit} {digit:goes/go}", "five goes")]
    [InlineData("{digit:/s} and {cells:/s}", " and s")]
    [InlineData("[{nothing}]", "[]")]
    [InlineData("", "")]
    public void Slots_take_lists_alternatives_and_the_right_number(string template, string filled)
    {
        var fillings = new Dictionary<string, Filling>
        {
            ["cells"] = new(2, joint => joint == Joint.And ? "a and b" : "a or b"),
            ["digit"] = Filling.One("five"),
        };

        Assert.Equal(filled, Template.Parse(template).Fill(fillings));
    }

    [Theory]
    [InlineData("one. two", "One. Two")]
    [InlineData("in row two, five goes. so is it? yes", "In row two, five goes. So is it? Yes")]
    [InlineData("X-wing", "X-wing")]
    [InlineData("r1c2 and r1c3 hold five. so r4c2 goes. row two", "r1c2 and r1c3 hold five. So r4c2 goes. Row two")]
    [InlineData("", "")]
    public void Each_sentence_starts_with_a_capital(string text, string capitalized) =>
        Assert.Equal(capitalized, Sentence.Capitalize(text));
}
