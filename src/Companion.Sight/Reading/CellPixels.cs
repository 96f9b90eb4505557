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
