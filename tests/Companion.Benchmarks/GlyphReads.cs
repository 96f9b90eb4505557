using Companion.Engine;
using Companion.Sight;
using Companion.Sight.Samples;
using Companion.Sight.Tests.Digits;

namespace Companion.Benchmarks;

/// <summary>How long glyphs take to be read, on one core: all big digits of a grid, and a grid full of marks.</summary>
internal static class GlyphReads
{
    internal static void Print(TextWriter output)
    {
        var random = new Random(1);
        GlyphSample[] samples = [.. Enumerable.Range(0, 4000).Select(_ => SampleDrawing.Draw(random, HeldOutFonts.Families, SampleRange.Small))];
        GlyphImage[] glyphs = [.. samples.Select(sample => sample.Image)];
        var lessons = glyphs.Take(20).Aggregate(Lessons.None, (known, glyph) => known.Add(glyph, Digit.Of(1)));
        Expect(samples);

        Times.Head(output, "glyphs read");
        var baseline = Times.Line(output, "1 (baseline)", [.. glyphs.Take(200).Chunk(1)], batch => GlyphReader.Standard.Read(batch));
        Times.Line(output, "81", [.. glyphs.Chunk(81).Take(40)], batch => GlyphReader.Standard.Read(batch), baseline);
        Times.Line(output, "400", [.. glyphs.Chunk(400)], batch => GlyphReader.Standard.Read(batch), baseline);
        Times.Line(output, "400, with 20 lessons", [.. glyphs.Chunk(400)], batch => GlyphReader.Standard.Read(batch, lessons), baseline);
        var planes = Enumerable.Range(0, 200).Select(_ => Plane(random)).ToArray();
        Times.Line(output, "cut out of a plane, 12 pixels high, 81", [.. Enumerable.Repeat(planes, 10)], all =>
        {
            for (var index = 0; index < 81; index++)
                GlyphImage.Cut(all[index], new(2, 2, 14, 18));
        }, baseline);
    }

    private static InkPlane Plane(Random random) => new(16, 20, [.. Enumerable.Range(0, 320).Select(_ => random.NextSingle())]);

    private static void Expect(GlyphSample[] samples)
    {
        var readings = GlyphReader.Standard.Read([.. samples.Select(sample => sample.Image)]);
        var right = samples.Zip(readings).Count(pair => (pair.Second.Digit?.Index ?? GlyphSample.NoDigit) == pair.First.Class);
        if (right < 0.97 * samples.Length)
            throw new InvalidOperationException($"{right} of {samples.Length} were read rightly, fewer than the network's record says.");
    }
}
