using Companion.Sight.Reading;

namespace Companion.Sight.Tests.Reading;

public sealed class MarkDecodingTests
{
    [Fact]
    public void No_marks_are_no_digits() => Assert.Empty(MarkDecoding.Likeliest([], isAscending: true));

    [Theory]
    [InlineData("1", "7", "19", false, "179")]
    [InlineData("1", "63", "4", true, "134")]
    [InlineData("1", "63", "4", false, "164")]
    [InlineData("21", "2", "9", false, "129")]
    // Each of two could give way: the one whose next digit is likelier does.
    [InlineData("58", "5", "9", true, "859")]
    public void A_mark_is_what_fits_the_others(string first, string second, string third, bool isAscending, string expected) =>
        Assert.Equal(expected, Digits([Belief(first, 0.4f), Belief(second, 0.4f), Belief(third, 0.4f)], isAscending));

    [Fact]
    public void What_hardly_looks_like_it_is_not_proposed_for_the_order() =>
        Assert.Equal("64", Digits([Belief("63", MarkDecoding.Unusual / 2), Belief("4", 0)], isAscending: true));

    [Theory]
    [InlineData(1, false)]
    [InlineData(2, true)]
    [InlineData(3, true)]
    [InlineData(4, false)]
    public void No_other_digits_are_likelier(int seed, bool isAscending)
    {
        var random = new Random(seed);
        for (var turn = 0; turn < 40; turn++)
        {
            var beliefs = Enumerable.Range(0, 4).Select(_ => Random(random)).ToArray();
            var all =
                from upper in Enumerable.Range(0, 81)
                from lower in Enumerable.Range(0, 81)
                select Likely(beliefs, [upper / 9, upper % 9, lower / 9, lower % 9], isAscending);

            Assert.Equal(all.Max(), Likely(beliefs, MarkDecoding.Likeliest(beliefs, isAscending), isAscending), 1e-6);
        }
    }

    // Of so many marks that nothing is known of, nine can be different: there are more ways than anybody could try.
    [Fact]
    public void Many_marks_that_may_be_anything_are_told_apart_as_far_as_can_be() =>
        Assert.Equal(9, MarkDecoding.Likeliest([.. Enumerable.Repeat(Belief("123456789", 1), 18)], isAscending: false).Distinct().Count());

    // By the words, not by the code: a digit again counts a thousandth, one out of order as Unusual says.
    private static double Likely(float[][] beliefs, int[] digits, bool isAscending) =>
        beliefs.Select((belief, mark) => (double)belief[digits[mark]]).Aggregate(1.0, (one, other) => one * other)
        * Math.Pow(0.001, digits.Length - digits.Distinct().Count())
        * Math.Pow(MarkDecoding.Unusual, isAscending ? digits.Zip(digits.Skip(1)).Count(pair => pair.Second < pair.First) : 0);

    private static string Digits(float[][] beliefs, bool isAscending) =>
        string.Concat(MarkDecoding.Likeliest(beliefs, isAscending).Select(digit => digit + 1));

    // The first digit is the likeliest one.
    private static float[] Belief(string digits, float next)
    {
        var belief = new float[9];
        for (var index = digits.Length - 1; index >= 0; index--)
            belief[digits[index] - '1'] = index == 0 ? 1 : next;
        return belief;
    }

    private static float[] Random(Random random)
    {
        float[] belief = [.. Enumerable.Range(0, 9).Select(_ => random.Next(3) == 0 ? random.NextSingle() : 0)];
        belief[random.Next(9)] = 1;
        return belief;
    }
}
