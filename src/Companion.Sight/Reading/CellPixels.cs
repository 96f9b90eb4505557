using System.Numerics;
using System.Runtime.InteropServices;

namespace Companion.Sight.Reading;

/// <summary>The pixels of one cell, within its lines.</summary>
internal sealed class CellPixels
{
    // As in a Frame: four bytes each.
    private readonly uint[] _pixels;

    private CellPixels(int width, int height) => (Width, Height, _pixels) = (width, height, new uint[width * height]);

    /// <summary>Columns.</summary>
    public int Width { get; }

    /// <summary>Rows.</summary>
    public int Height { get; }

    /// <summary>How many pixels there are.</summary>
    public int Count => Width * Height;

    /// <summary>The colour of a pixel.</summary>
    /// <param name="pixel">Row by row, from 0.</param>
    public Rgb this[int pixel] => Rgb.Of(_pixels[pixel]);

    /// <summary>A row as it is in a <see cref="Frame"/>.</summary>
    /// <param name="y">From 0, the topmost one.</param>
    public ReadOnlySpan<byte> Row(int y) => MemoryMarshal.AsBytes(_pixels.AsSpan(y * Width, Width));

    /// <summary>Copies them.</summary>
    /// <param name="frame">The straight picture.</param>
    /// <param name="box">The cell.</param>
    public static CellPixels Of(Frame frame, CellBox box)
    {
        var cell = new CellPixels(box.Width, box.Height);
        var target = MemoryMarshal.AsBytes(cell._pixels.AsSpan());
        for (var y = 0; y < box.Height; y++)
            box.Row(frame, y).CopyTo(target[(4 * y * box.Width)..]);
        return cell;
    }

    /// <summary>How far each pixel is from one colour, as <see cref="Rgb.Distance"/> tells.</summary>
    /// <param name="colour">The colour.</param>
    public float[] Distances(Rgb colour)
    {
        var distances = new float[Count];
        var pixel = 0;
        for (; pixel + Vector<uint>.Count <= Count; pixel += Vector<uint>.Count)
        {
            var (red, green, blue) = ColourSample.Parts(new(_pixels, pixel));
            var most = Vector.Max(Away(red, colour.Red), Vector.Max(Away(green, colour.Green), Away(blue, colour.Blue)));
            most.CopyTo(distances, pixel);
        }

        for (; pixel < Count; pixel++)
            distances[pixel] = this[pixel].Distance(colour);
        return distances;

        static Vector<float> Away(Vector<int> part, float from) => Vector.Abs(Vector.ConvertToSingle(part) - new Vector<float>(from));
    }

    /// <summary>How far each of some pixels in a row is from the nearest mixture of two colours, as <see cref="Rgb.DistanceToMix"/> tells.</summary>
    /// <param name="pixel">The first of them.</param>
    /// <param name="first">The one colour.</param>
    /// <param name="second">The other.</param>
    /// <param name="distances">Where they are put, one for each pixel.</param>
    public void DistancesToMix(int pixel, Rgb first, Rgb second, Span<float> distances)
    {
        var along = second - first;
        var squares = Math.Max(along.Dot(along), float.Epsilon);
        var at = 0;
        for (; at + Vector<uint>.Count <= distances.Length; at += Vector<uint>.Count)
        {
            var (red, green, blue) = ColourSample.Parts(new(_pixels, pixel + at));
            var (r, g, b) = (From(red, first.Red), From(green, first.Green), From(blue, first.Blue));
            var part = Vector.Min(Vector<float>.One, Vector.Max(Vector<float>.Zero, (r * along.Red + g * along.Green + b * along.Blue) / squares));
            Vector.Max(Vector.Abs(r - part * along.Red), Vector.Max(Vector.Abs(g - part * along.Green), Vector.Abs(b - part * along.Blue)))
                .CopyTo(distances[at..]);
        }

        for (; at < distances.Length; at++)
            distances[at] = this[pixel + at].DistanceToMix(first, second);

        static Vector<float> From(Vector<int> part, float from) => Vector.ConvertToSingle(part) - new Vector<float>(from);
    }

    /// <summary>Every pixel that counts.</summary>
    /// <param name="isCounted">Which ones do.</param>
    public ColourSample Sample(bool[] isCounted)
    {
        var sample = new List<uint>();
        for (var pixel = 0; pixel < Count; pixel++)
        {
            if (isCounted[pixel])
                sample.Add(_pixels[pixel]);
        }

        return new([.. sample]);
    }

    /// <summary>Enough pixels to find what is frequent: all, but every third of a large cell.</summary>
    public ColourSample Sample()
    {
        const int Large = 1600, Stride = 3;
        if (Count <= Large)
            return new(_pixels);
        var sample = new uint[(Count + Stride - 1) / Stride];
        for (var index = 0; index < sample.Length; index++)
            sample[index] = _pixels[Stride * index];
        return new(sample);
    }
}
