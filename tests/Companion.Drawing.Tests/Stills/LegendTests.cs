using Companion.Drawing.Pictures;
using Companion.Drawing.Stills;
using Companion.Drawing.Tests.Pictures;

namespace Companion.Drawing.Tests.Stills;

public class LegendTests
{
    [Theory]
    [InlineData("xy-wing", "P: pivot; Q, R: pincers; weak link; candidate of the pattern; candidate that goes")]
    [InlineData("x-wing", "where to look; B: base cell; strong link; candidate of the pattern; candidate that goes")]
    [InlineData("hidden-single", "where to look; S: single; digit that follows")]
    public void Each_kind_of_shape_is_told_once(string rule, string legend)
    {
        var picture = PictureOf.Hint(Standing.HintsOf(rule, OneOfEachRule.Drawn[rule].Standing).Why);

        Assert.Equal(legend, string.Join("; ", Legend.Of(picture).Select(entry => entry.Words)));
    }

    [Fact]
    public void An_empty_picture_has_no_legend() => Assert.Empty(Legend.Of(new([], "")));
}
