using Companion.Drawing.Pictures;
using Companion.Engine.Rules;

namespace Companion.Drawing.Tests.Pictures;

public class PictureTests
{
    public static TheoryData<string> Rules => [.. OneOfEachRule.Drawn.Keys];

    [Theory]
    [MemberData(nameof(Rules))]
    public void The_whole_deduction_is_drawn_with_its_pattern_and_what_follows(string rule)
    {
        var (standing, drawn) = OneOfEachRule.Drawn[rule];

        Assert.Equal(drawn, PictureText.Of(PictureOf.Hint(Standing.HintsOf(rule, standing).Why)));
    }

    [Fact]
    public void Every_rule_of_the_ladder_has_a_picture_drawn_here() =>
        Assert.Equal(Ladder.Whole.Rules.Select(rule => rule.Id.Value).Order(), OneOfEachRule.Drawn.Keys.Order());

    [Theory]
    [MemberData(nameof(Rules))]
    public void The_caption_is_what_the_hint_says(string rule)
    {
        var hints = Standing.HintsOf(rule, OneOfEachRule.Drawn[rule].Standing);

        Assert.Equal(hints.What.Words.Written, PictureOf.Hint(hints.What).Caption);
        Assert.Equal(hints.Why.Words.Written, PictureOf.Hint(hints.Why).Caption);
    }

    [Fact]
    public void Each_role_has_a_letter_of_its_own_and_each_pincer_and_each_set_has_one()
    {
        var pictures = OneOfEachRule.Drawn.Select(drawn => PictureOf.Hint(Standing.HintsOf(drawn.Key, drawn.Value.Standing).Why));
        var letters = pictures.SelectMany(picture => picture.Shapes).OfType<CellShape>().Select(cell => cell.Tab).Distinct().Order();

        Assert.Equal(["A", "B", "C", "D", "E", "F", "G", "H", "I", "J", "L", "M", "O", "P", "Q", "R", "S", "T", "U", "X", "Y", "Z"], letters);
        Assert.Equal(18, letters.Select(Tabs.MeaningOf).Distinct().Count());
    }
}
