using Companion.Drawing.Pictures;
using Companion.Engine.Proofs;

namespace Companion.Drawing.Tests.Pictures;

public class GradeTests
{
    private static readonly HashSet<string> Singles = ["full-house", "hidden-single", "naked-single"];

    public static TheoryData<string> Rules => [.. OneOfEachRule.Drawn.Keys];

    [Theory]
    [MemberData(nameof(Rules))]
    public void Grade_1_shows_one_house_or_chute_and_nothing_else(string rule) =>
        Assert.IsType<HouseShape>(Assert.Single(PictureOf.Hint(HintsOf(rule).Where).Shapes));

    [Theory]
    [MemberData(nameof(Rules))]
    public void Grade_2_shows_the_house_of_grade_1_and_names_the_rule(string rule)
    {
        var hints = HintsOf(rule);
        var (where, what) = (PictureOf.Hint(hints.Where), PictureOf.Hint(hints.What));

        Assert.Equal(where.Shapes, what.Shapes);
        Assert.Contains(hints.What.Name, what.Caption, StringComparison.Ordinal);
        Assert.DoesNotContain(hints.What.Name, where.Caption, StringComparison.OrdinalIgnoreCase);
    }

    [Theory]
    [MemberData(nameof(Rules))]
    public void Grade_3_shows_nothing_that_follows(string rule)
    {
        var hints = HintsOf(rule);
        var follows = hints.Why.Deduction.Removes | hints.Why.Deduction.Places;
        var shapes = PictureOf.Hint(hints.Which).Shapes;

        Assert.DoesNotContain(shapes, shape => shape is SlashShape or LozengeShape);
        Assert.All(shapes.OfType<MarkShape>(), mark => Assert.False(follows.Contains(PictureText.CandidateAt(mark.X, mark.Y))));
    }

    [Theory]
    [MemberData(nameof(Rules))]
    public void Grade_4_shows_all_of_grade_3_and_what_follows(string rule)
    {
        var hints = HintsOf(rule);
        var (which, why) = (PictureOf.Hint(hints.Which).Shapes, PictureOf.Hint(hints.Why).Shapes);

        Assert.Empty(which.Except(why));
        Assert.Contains(why, shape => shape is SlashShape or LozengeShape);
        if (Singles.Contains(rule))
            return;

        // A rectangle may conclude about its own corners: their marks are not in grade 3, or the one that is missing would tell. Nor
        // are the links of a net that lead from what it supposes, with the marks to which they lead.
        var follows = hints.Why.Deduction.Removes | hints.Why.Deduction.Places;
        var untold = hints.Why.Deduction.Links.Where(link => follows.Contains(link.From)).Select(link => link.To).ToHashSet();
        Assert.Equal(which.Where(IsTold), why.Where(shape => shape is not (SlashShape or LozengeShape) && IsTold(shape)));

        bool IsTold(Shape shape) => shape switch
        {
            MarkShape mark => PictureText.CandidateAt(mark.X, mark.Y) is var candidate
                && !follows.Cells.Contains(candidate.Cell) && !untold.Contains(candidate),
            LinkShape link => !follows.Contains(PictureText.CandidateAt(link.X1, link.Y1))
                && !follows.Contains(PictureText.CandidateAt(link.X2, link.Y2)),
            _ => true,
        };
    }

    [Theory]
    [InlineData("naked-single", "cell first S r5c3")]
    [InlineData("full-house", "house r5\ncell first S r5c3")]
    [InlineData("hidden-single", "house b4")]
    public void Grade_3_of_a_single_asks_and_does_not_answer(string rule, string drawn) =>
        Assert.Equal(drawn, PictureText.Of(PictureOf.Hint(HintsOf(rule).Which)));

    private static Hints HintsOf(string rule) => Standing.HintsOf(rule, OneOfEachRule.Drawn[rule].Standing);
}
