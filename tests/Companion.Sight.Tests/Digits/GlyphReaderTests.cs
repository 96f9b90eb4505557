using Companion.Sight.Samples;

namespace Companion.Sight.Tests.Digits;

public sealed class GlyphReaderTests
{
    [Fact]
    public void Nothing_gives_nothing() => Assert.Empty(GlyphReader.Standard.Read([]));

    [Fact]
    public void An_empty_image_is_surely_no_digit()
    {
        var reading = Assert.Single(GlyphReader.Standard.Read([GlyphImage.Empty]));

        Assert.Null(reading.Digit);
        Assert.InRange(reading.Certainty, CellReading.Sure, 1);
    }

    [Fact]
    public void A_glyph_is_read_the_same_alone_among_others_and_on_another_thread()
    {
        var random = new Random(5);
        GlyphImage[] glyphs = [.. Enumerable.Range(0, 100).Select(_ => SampleDrawing.Draw(random, HeldOutFonts.Families, SampleRange.Small).Image)];
        var together = GlyphReader.Standard.Read(glyphs);

        Parallel.For(0, 400, index => Same(together[index % 100], GlyphReader.Standard.Read([glyphs[index % 100]])[0]));
        Parallel.For(0, 8, _ => Assert.All(GlyphReader.Standard.Read(glyphs).Zip(together), pair => Same(pair.First, pair.Second)));
    }

    [Fact]
    public void Certainties_are_parts_of_one()
    {
        var random = new Random(6);
        GlyphImage[] glyphs = [.. Enumerable.Range(0, 300).Select(_ => SampleDrawing.Draw(random, HeldOutFonts.Families, SampleRange.Small).Image)];

        Assert.All(GlyphReader.Standard.Read(glyphs), reading => Assert.InRange(reading.Certainty, 0, 1));
    }

    [Theory]
    [InlineData(4, 24, 1)]
    [InlineData(3, 16, 1)]
    [InlineData(6, 40, 1)]
    [InlineData(24, 4, null)]
    [InlineData(16, 2, null)]
    [InlineData(1, 60, null)]
    [InlineData(20, 20, null)]
    public void A_bare_stroke_is_a_1_when_it_stands_like_one(int width, int height, int? digit)
    {
        var (across, down) = (width + 4, height + 4);
        var ink = new float[across * down];
        for (var y = 2; y < 2 + height; y++)
            ink.AsSpan(y * across + 2, width).Fill(1);

        var glyph = GlyphImage.Cut(new(across, down, ink), new(1, 1, across - 1, down - 1));

        Assert.Equal(digit, GlyphReader.Standard.Read([glyph])[0].Digit?.Value);
    }

    private static void Same(GlyphReading expected, GlyphReading actual)
    {
        Assert.Equal(expected.Digit, actual.Digit);
        Assert.Equal(expected.Certainty, actual.Certainty, 1e-4f);
    }
}
