using SkiaSharp;

namespace Companion.Sight.Samples;

/// <summary>The colours of a sample.</summary>
/// <param name="Ground">What the glyph stands on.</param>
/// <param name="Other">What the ground runs into, or the same.</param>
/// <param name="Ink">What the glyph is drawn in.</param>
internal sealed record SceneColours(SKColor Ground, SKColor Other, SKColor Ink)
{
    /// <summary>Light or dark, grey or coloured, with enough between ground and ink to be read.</summary>
    public static SceneColours Pick(Random random)
    {
        var light = random.Chance(0.6);
        while (true)
        {
            var ground = random.Chance(0.4) ? light ? SKColors.White : random.Near(new(24, 24, 28), 20) : Any(random, light);
            var ink = random.Chance(0.5) ? random.Near(light ? new(20, 20, 20) : new(235, 235, 235), 20) : Any(random, !light);
            if (Distance(ground, ink) >= random.Between(110, 260))
                return new(ground, random.Chance(0.25) ? random.Near(ground, 40) : ground, ink);
        }
    }

    /// <summary>How far two colours are from each other: from 0 to 441.</summary>
    public static float Distance(SKColor one, SKColor other)
    {
        var (red, green, blue) = (one.Red - other.Red, one.Green - other.Green, one.Blue - other.Blue);
        return MathF.Sqrt(red * red + green * green + blue * blue);
    }

    private static SKColor Any(Random random, bool light) =>
        SKColor.FromHsl(random.Between(0, 360), random.Between(0, 100), light ? random.Between(55, 100) : random.Between(0, 50));
}
