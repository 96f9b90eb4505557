using Companion.Sight.Samples;

namespace Companion.Sight.Tests.Digits;

/// <summary>
/// Reads samples drawn in families that the network never saw. The figures on many more of them stand in
/// <c>src/Companion.Sight/Weights/README.md</c>; the samples here are the same at every run.
/// </summary>
public sealed class HeldOutTests
{
    [Fact]
    public void There_are_twenty_families_and_more() => Assert.True(HeldOutFonts.Families.Count >= 20);

    [Fact]
    public void Big_digits_are_read() => Check(SampleRange.Big, right: 0.993, sure: 0.97, wrongly: 0.002);

    [Fact]
    public void Small_marks_are_read() => Check(SampleRange.Small, right: 0.984, sure: 0.94, wrongly: 0.004);

    [Theory]
    [InlineData(3)]
    [InlineData(4)]
    public void Every_digit_of_a_whole_screen_is_read_for_the_most_part(int seed)
    {
        var glyphs = Screen.Draw(new(seed), HeldOutFonts.Families, SampleRange.Small, 20);
        var readings = GlyphReader.Standard.Read([.. glyphs.Select(glyph => glyph.Image)]);

        foreach (var digit in glyphs.Select((glyph, index) => (glyph.Class, readings[index])).GroupBy(glyph => glyph.Class))
            Assert.InRange(digit.Count(glyph => glyph.Item2.Digit?.Index == digit.Key), 16, 20);
    }

    private static void Check(SampleRange range, double right, double sure, double wrongly)
    {
        const int Count = 2000;
        var random = new Random(20);
        var samples = Enumerable.Range(0, Count).Select(_ => SampleDrawing.Draw(random, HeldOutFonts.Families, range)).ToArray();
        var readings = GlyphReader.Standard.Read([.. samples.Select(sample => sample.Image)]);
        var wrong = samples.Zip(readings).Where(pair => (pair.Second.Digit?.Index ?? GlyphSample.NoDigit) != pair.First.Class).ToArray();

        Assert.InRange(1 - (double)wrong.Length / Count, right, 1);
        Assert.InRange((double)readings.Count(reading => reading.Certainty >= CellReading.Sure) / Count, sure, 1);
        Assert.InRange((double)wrong.Count(pair => pair.Second.Certainty >= CellReading.Sure) / Count, 0, wrongly);
    }
}
