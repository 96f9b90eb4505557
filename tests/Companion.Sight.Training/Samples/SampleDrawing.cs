using SkiaSharp;

namespace Companion.Sight.Samples;

/// <summary>Draws glyphs as they may be cut out of a frame: what the network is trained with, and what it is tested with.</summary>
internal static class SampleDrawing
{
    // The part of the samples that are cut out of what stands beside them.
    private const double Alone = 0.6;

    /// <summary>Draws one.</summary>
    /// <param name="random">What is left to the lot: the same seed gives the same sample.</param>
    /// <param name="families">The families to choose from.</param>
    /// <param name="range">Which samples are wanted.</param>
    public static GlyphSample Draw(Random random, IReadOnlyList<FontFamily> families, SampleRange range)
    {
        var height = random.BetweenByRatio(range.From, range.To);
        var subject = random.Chance(SampleRange.NoDigits) ? NoDigit(random, families, height) : Digits.Pick(random, families, height, range.Warped);
        return Cut(random, subject, height);
    }

    /// <summary>Draws a glyph into a scene and cuts it out.</summary>
    internal static GlyphSample Cut(Random random, Subject subject, float height)
    {
        using var scene = Scene.Of(random, subject, height);
        var (box, room) = (scene.Box, Math.Max(0.4f, 0.02f * height));
        // What finds glyphs leaves a little room around them, now more, now less.
        var cut = new PixelBox(
            box.Left - 0.7f + random.Normal(room),
            box.Top - 0.7f + random.Normal(room),
            box.Right + 0.7f + random.Normal(room),
            box.Bottom + 0.7f + random.Normal(room));
        var ink = InkOf(random, scene);
        return new(GlyphImage.Cut(random.Chance(Alone) ? OwnInk.Of(ink, cut) : ink, cut), subject.Class, subject.Family);
    }

    private static Subject NoDigit(Random random, IReadOnlyList<FontFamily> families, float height) => random.Next(20) switch
    {
        < 6 => Signs.Letter(random, families, height),
        < 7 => Signs.Nought(random, families, height),
        < 9 => Signs.Pair(random, families, height),
        < 11 => Signs.Part(random, families, height),
        < 19 => Shapes.Pick(random, height),
        _ => new(GlyphSample.NoDigit, "", SKRect.Create(height * random.Between(0.3f, 1.2f), height), (_, _) => { }, MayBeStruck: false),
    };

    /// <summary>The ink, by two ways of telling it from the ground, with colours that are known but roughly.</summary>
    private static InkPlane InkOf(Random random, Scene scene)
    {
        var (ground, ink) = (random.Near(scene.Colours.Ground, 4), random.Near(scene.Colours.Ink, 16));
        var (red, green, blue) = (ink.Red - ground.Red, ink.Green - ground.Green, ink.Blue - ground.Blue);
        float length = red * red + green * green + blue * blue;
        var byDistance = random.Chance(0.6);
        var pixels = scene.Picture.GetPixelSpan();
        var plane = new float[scene.Picture.Width * scene.Picture.Height];
        for (var index = 0; index < plane.Length; index++)
        {
            var (r, g, b) = (pixels[4 * index] - ground.Red, pixels[4 * index + 1] - ground.Green, pixels[4 * index + 2] - ground.Blue);
            plane[index] = Math.Clamp(byDistance ? MathF.Sqrt((r * r + g * g + b * b) / length) : (r * red + g * green + b * blue) / length, 0, 1);
        }

        return new(scene.Picture.Width, scene.Picture.Height, plane);
    }
}
