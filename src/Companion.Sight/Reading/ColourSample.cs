using System.Numerics;
using System.Numerics.Tensors;

namespace Companion.Sight.Reading;

/// <summary>Pixels of a cell, of which only the colours matter. Several at once are looked at: a board has a million.</summary>
/// <param name="pixels">The pixels, each red, green and blue from its lowest byte up.</param>
internal sealed class ColourSample(uint[] pixels)
{
    // Coarse colours: 16 steps of each of the three parts.
    private const int Bins = 4096;

    /// <summary>The most frequent colour.</summary>
    public Rgb Mode()
    {
        const float Reach = 20;
        Span<int> counts = stackalloc int[Bins];
        counts.Clear();
        foreach (var pixel in pixels)
            counts[BinOf(pixel)]++;
        var best = counts.IndexOf(TensorPrimitives.Max<int>(counts));
        var mode = new Rgb((best >> 8 << 4) + 8, (best >> 4 & 15) * 16 + 8, (best & 15) * 16 + 8);
        // A colour on the border of two bins fills both: the mean of all that is near it counts.
        for (var pass = 0; pass < 2; pass++)
        {
            var (sum, count) = Near(mode, Reach);
            if (count > 0)
                mode = sum * (1f / count);
        }

        return mode;
    }

    /// <summary>Which part of the pixels is near a colour, from 0 to 1.</summary>
    /// <param name="colour">The colour.</param>
    /// <param name="reach">How far a pixel may be from it, as <see cref="Rgb.Distance"/> tells.</param>
    public float PartNear(Rgb colour, float reach) => Near(colour, reach).Count / (float)pixels.Length;

    /// <summary>The red, green and blue of pixels.</summary>
    /// <param name="pixels">The pixels.</param>
    public static (Vector<int> Red, Vector<int> Green, Vector<int> Blue) Parts(Vector<uint> pixels)
    {
        var part = new Vector<uint>(0xFF);
        return (Vector.AsVectorInt32(pixels & part), Vector.AsVectorInt32((pixels >>> 8) & part), Vector.AsVectorInt32((pixels >>> 16) & part));
    }

    private static int BinOf(uint pixel) => (int)((pixel >> 4 & 15) << 8 | (pixel >> 12 & 15) << 4 | (pixel >> 20 & 15));

    // The sum of the colours that are near one, and how many they are.
    private (Rgb Sum, int Count) Near(Rgb colour, float reach)
    {
        var (red, green, blue, count) = (Vector<int>.Zero, Vector<int>.Zero, Vector<int>.Zero, Vector<int>.Zero);
        var index = 0;
        for (; index + Vector<uint>.Count <= pixels.Length; index += Vector<uint>.Count)
        {
            var (r, g, b) = Parts(new(pixels, index));
            var isNear = IsNear(r, colour.Red, reach) & IsNear(g, colour.Green, reach) & IsNear(b, colour.Blue, reach);
            (red, green, blue, count) = (red + (r & isNear), green + (g & isNear), blue + (b & isNear), count - isNear);
        }

        var (sum, all) = (new Rgb(Vector.Sum(red), Vector.Sum(green), Vector.Sum(blue)), Vector.Sum(count));
        for (; index < pixels.Length; index++)
        {
            if (Rgb.Of(pixels[index]) is var one && one.Distance(colour) <= reach)
                (sum, all) = (sum + one, all + 1);
        }

        return (sum, all);
    }

    private static Vector<int> IsNear(Vector<int> part, float to, float reach) =>
        Vector.LessThanOrEqual(Vector.Abs(Vector.ConvertToSingle(part) - new Vector<float>(to)), new Vector<float>(reach));
}
