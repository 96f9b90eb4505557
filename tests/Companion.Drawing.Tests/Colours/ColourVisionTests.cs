namespace Companion.Drawing.Tests.Colours;

public class ColourVisionTests
{
    public static TheoryData<string> Visions => [.. ColourVision.Matrices.Keys];

    // Sharma, Wu, Dalal 2005, table 1: pairs 1, 17 and 34.
    [Theory]
    [InlineData(50, 2.6772, -79.7751, 50, 0, -82.7485, 2.0425)]
    [InlineData(50, 2.5, 0, 73, 25, -18, 27.1492)]
    [InlineData(2.0776, 0.0795, -1.1350, 0.9033, -0.0636, -0.5514, 0.9082)]
    public void Differences_are_those_of_the_published_test_data(
        double l1, double a1, double b1, double l2, double a2, double b2, double difference)
    {
        Assert.Equal(difference, new Lab(l1, a1, b1).DifferenceFrom(new(l2, a2, b2)), 4);
        Assert.Equal(difference, new Lab(l2, a2, b2).DifferenceFrom(new(l1, a1, b1)), 4);
    }

    // The matrices of Machado, Oliveira, Fernandes 2009 applied to pure red.
    [Theory]
    [InlineData("all cones", "#FF0000")]
    [InlineData("protanopia", "#6D5F00")]
    [InlineData("deuteranopia", "#A39000")]
    [InlineData("tritanopia", "#FF000F")]
    public void Red_is_seen_as_the_model_says(string vision, string seen) =>
        Assert.Equal(seen, ColourVision.Seen(new(255, 0, 0), vision).ToString());

    // The smallest difference within all eight colours of Okabe & Ito is 10.87, in tritanopia (worked out with these formulas).
    [Theory]
    [MemberData(nameof(Visions))]
    public void The_colours_of_any_two_roles_stay_apart(string vision)
    {
        var roles = PaletteTests.Roles.Select(role => (role.Key, Seen: Lab.Of(ColourVision.Seen(role.Value, vision)))).ToList();
        foreach (var (name, seen) in roles)
        {
            foreach (var (otherName, otherSeen) in roles.Where(other => string.CompareOrdinal(name, other.Key) < 0))
                Assert.True(seen.DifferenceFrom(otherSeen) > 10, $"{name} and {otherName}: {seen.DifferenceFrom(otherSeen)}");
        }
    }
}
