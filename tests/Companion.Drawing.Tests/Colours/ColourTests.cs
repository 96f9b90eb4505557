using Companion.Drawing.Colours;

namespace Companion.Drawing.Tests.Colours;

public class ColourTests
{
    private static readonly Colour White = new(255, 255, 255);

    // Source: WCAG 2.2, contrast ratio; the values are those formulas worked out to four places, on both sides of 4.5:1 and 3:1.
    [Theory]
    [InlineData("#767676", 4.5422)]
    [InlineData("#777777", 4.4781)]
    [InlineData("#949494", 3.0335)]
    [InlineData("#959595", 2.9953)]
    public void Contrast_to_white_is_that_of_the_guidelines(string grey, double contrast)
    {
        Assert.Equal(contrast, Colour.Parse(grey).ContrastTo(White), 4);
        Assert.Equal(contrast, White.ContrastTo(Colour.Parse(grey)), 4);
    }

    [Fact]
    public void Black_and_white_are_21_to_1_and_a_colour_to_itself_1_to_1()
    {
        Assert.Equal(21, White.ContrastTo(default), 9);
        Assert.Equal(1, White.ContrastTo(White), 9);
    }

    [Theory]
    [InlineData("#0072B2")]
    [InlineData("#000000")]
    [InlineData("#FFFFFF")]
    public void A_colour_is_written_as_it_is_read(string text) => Assert.Equal(text, Colour.Parse(text).ToString());

    [Fact]
    public void Lower_case_is_read_too() => Assert.Equal(new(0, 0x72, 0xB2), Colour.Parse("#0072b2"));

    [Theory]
    [InlineData("")]
    [InlineData("0072B2")]
    [InlineData("#0072B")]
    [InlineData("#0072B2FF")]
    [InlineData("#00 2B2")]
    [InlineData("#GG72B2")]
    public void What_is_no_colour_is_refused(string text)
    {
        Assert.False(Colour.TryParse(text, out _));
        Assert.Throws<FormatException>(() => Colour.Parse(text));
    }
}
