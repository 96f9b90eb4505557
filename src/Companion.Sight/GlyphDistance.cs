namespace Companion.Sight;

/// <summary>How far two glyphs are from each other.</summary>
internal static class GlyphDistance
{
    private const int Side = GlyphImage.Side;

    /// <summary>
    /// The length of their difference, as a part of the length of the heavier one: 0 for the same glyph, about 1 for those that share
    /// nothing. The difference is blurred first, so that edges which lie a little differently cancel out.
    /// </summary>
    public static float Between(GlyphImage one, GlyphImage other)
    {
        Span<float> across = stackalloc float[Side * Side];
        var first = one.Ink.AsSpan();
        var second = other.Ink.AsSpan();
        var (weight, otherWeight) = (0f, 0f);
        for (var index = 0; index < across.Length; index++)
        {
            across[index] = first[index] - second[index];
            weight += first[index] * first[index];
            otherWeight += second[index] * second[index];
        }

        Span<float> down = stackalloc float[Side * Side];
        Blur(across, down);
        Blur(down, across);
        var sum = 0f;
        foreach (var value in across)
            sum += value * value;
        return MathF.Sqrt(sum / Math.Max(1, Math.Max(weight, otherWeight)));
    }

    /// <summary>The mean of each three side by side, turned over the diagonal: done twice, it goes across and down.</summary>
    private static void Blur(ReadOnlySpan<float> from, Span<float> to)
    {
        for (var row = 0; row < Side; row++)
            for (var column = 0; column < Side; column++)
                to[column * Side + row] = (from[row * Side + column]
                    + (column > 0 ? from[row * Side + column - 1] : 0)
                    + (column < Side - 1 ? from[row * Side + column + 1] : 0)) / 3;
    }
}
