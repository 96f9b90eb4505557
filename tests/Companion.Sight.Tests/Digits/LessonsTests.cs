using Companion.Engine;
using Companion.Sight.Samples;
using SkiaSharp;

namespace Companion.Sight.Tests.Digits;

public sealed class LessonsTests
{
    [Fact]
    public void What_was_taught_is_read_as_taught_surely()
    {
        var glyphs = Glyphs(7);
        foreach (Digit? taught in new Digit?[] { Digit.Of(4), Digit.Of(9), null })
            foreach (var glyph in glyphs)
                Assert.Equal(new(taught, 1), GlyphReader.Standard.Read([glyph], Lessons.None.Add(glyph, taught))[0]);
    }

    [Fact]
    public void The_same_digit_a_little_moved_is_read_as_taught_and_no_other_digit_is()
    {
        // The first nine glyphs are the digits from 1 to 9, and so are the next nine.
        var glyphs = Clean(0);
        var later = Clean(0.4f);
        for (var digit = 0; digit < 9; digit++)
        {
            var taught = Digit.Of(1 + (digit + 4) % 9);
            var lessons = Lessons.None.Add(glyphs[digit], taught);
            var readings = GlyphReader.Standard.Read(later, lessons);

            for (var other = 0; other < 9; other++)
                Assert.Equal(other == digit ? taught : Digit.Of(other + 1), readings[other].Digit);
            Assert.InRange(readings[digit].Certainty, CellReading.Sure, 1);
        }
    }

    [Fact]
    public void The_latest_word_on_a_glyph_counts()
    {
        var glyph = Glyphs(9)[0];
        var lessons = Lessons.None.Add(glyph, Digit.Of(3)).Add(glyph, Digit.Of(8));

        Assert.Single(lessons.Taught);
        Assert.Equal(8, GlyphReader.Standard.Read([glyph], lessons)[0].Digit?.Value);
    }

    [Fact]
    public void Lessons_do_not_change()
    {
        var lessons = Lessons.None.Add(GlyphImage.Empty, null);
        lessons.Add(Glyphs(9)[0], Digit.Of(1));

        Assert.Single(lessons.Taught);
        Assert.Empty(Lessons.None.Taught);
    }

    private static GlyphImage[] Glyphs(int seed) =>
        [.. Screen.Draw(new(seed), HeldOutFonts.Families, SampleRange.Big, 1).Select(glyph => glyph.Image)];

    /// <summary>The nine digits of one face at thirteen pixels, moved to the right by a part of a pixel.</summary>
    private static GlyphImage[] Clean(float moved) => [.. Enumerable.Range(1, 9).Select(digit =>
    {
        var face = HeldOutFonts.Families.Single(family => family.Name == "pt-sans").Faces[0];
        using var font = new SKFont(face, 18) { Subpixel = true, Hinting = SKFontHinting.None };
        using var bitmap = new SKBitmap(24, 24, SKColorType.Gray8, SKAlphaType.Opaque);
        using var canvas = new SKCanvas(bitmap);
        using var paint = new SKPaint { IsAntialias = true, Color = SKColors.White };
        canvas.Clear(SKColors.Black);
        canvas.DrawText(digit.ToString(), 6 + moved, 19, SKTextAlign.Left, font, paint);
        return GlyphImage.Cut(new(24, 24, [.. bitmap.GetPixelSpan().ToArray().Select(grey => grey / 255f)]), new(1, 1, 23, 23));
    })];
}
