using System.Numerics.Tensors;

namespace Companion.Sight;

/// <summary>How far two glyphs are from each other.</summary>
internal static class GlyphDistance
{
    private const int Side = GlyphImage.Side;

    // With a border of zeros, so that each value has neighbours.
    private const int Stride = Side + 2;

    /// <summary>
    /// The length of their difference, as a part of the length of the heavier one: 0 for the same glyph, about 1 for those that share
    /// nothing. The difference is blurred first, each value being the mean of the nine around it, so that edges which lie a little
    /// differently cancel out.
    /// </summary>
    public static float Between(GlyphImage one, GlyphImage other)
    {
        var first = one.Ink.AsSpan();
        var second = other.Ink.AsSpan();
        Span<float> difference = stackalloc float[Stride * Stride];
        difference.Clear();
        for (var row = 0; row < Side; row++)
            TensorPrimitives.Subtract(
                first.Slice(row * Side, Side), second.Slice(row * Side, Side), difference.Slice((row + 1) * Stride + 1, Side));

        Span<float> across = stackalloc float[Stride * Stride];
        across.Clear();
        TensorPrimitives.Add(difference[..^2], difference[1..^1], across[1..^1]);
        TensorPrimitives.Add(across[1..^1], difference[2..], across[1..^1]);

        Span<float> sums = stackalloc float[Side];
        var length = 0f;
        for (var row = 1; row <= Side; row++)
        {
            TensorPrimitives.Add(across.Slice((row - 1) * Stride + 1, Side), across.Slice(row * Stride + 1, Side), sums);
            TensorPrimitives.Add(sums, across.Slice((row + 1) * Stride + 1, Side), sums);
            length += TensorPrimitives.SumOfSquares<float>(sums);
        }

        var heavier = Math.Max(TensorPrimitives.SumOfSquares(first), TensorPrimitives.SumOfSquares(second));
        return MathF.Sqrt(length / Math.Max(1, heavier)) / 9;
    }
}
