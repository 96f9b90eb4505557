namespace Companion.Sight.Reading;

/// <summary>The pixels of one cell, within its lines.</summary>
internal sealed class CellPixels
{
    private readonly byte[] _pixels;

    private CellPixels(int width, int height) => (Width, Height, _pixels) = (width, height, new byte[3 * width * height]);

    /// <summary>Columns.</summary>
    public int Width { get; }

    /// <summary>Rows.</summary>
    public int Height { get; }

    /// <summary>How many pixels there are.</summary>
    public int Count => Width * Height;

    /// <summary>The colour of a pixel.</summary>
    /// <param name="pixel">Row by row, from 0.</param>
    public Rgb this[int pixel] => new(_pixels[3 * pixel], _pixels[3 * pixel + 1], _pixels[3 * pixel + 2]);

    /// <summary>How many pixels of a colour that is frequent there are to one that is looked at: a large cell has more than enough.</summary>
    public int Stride => Count > 1600 ? 3 : 1;

    /// <summary>How far each pixel is from one colour, as <see cref="Rgb.Distance"/> tells.</summary>
    /// <param name="colour">The colour.</param>
    public float[] Distances(Rgb colour)
    {
        var distances = new float[Count];
        var at = 0;
        foreach (ref var distance in distances.AsSpan())
        {
            var (red, green, blue) = (Math.Abs(_pixels[at] - colour.Red), Math.Abs(_pixels[at + 1] - colour.Green), Math.Abs(_pixels[at + 2] - colour.Blue));
            var most = red > green ? red : green;
            distance = most > blue ? most : blue;
            at += 3;
        }

        return distances;
    }

    /// <summary>A pixel's coarse colour, a number below <see cref="Bins"/>.</summary>
    /// <param name="pixel">Row by row, from 0.</param>
    public int BinOf(int pixel) => (_pixels[3 * pixel] >> 4 << 8) | (_pixels[3 * pixel + 1] >> 4 << 4) | (_pixels[3 * pixel + 2] >> 4);

    /// <summary>Coarse colours: 16 steps of each of the three parts.</summary>
    public const int Bins = 4096;

    /// <summary>Copies them.</summary>
    /// <param name="frame">The straight picture.</param>
    /// <param name="box">The cell.</param>
    public static CellPixels Of(Frame frame, CellBox box)
    {
        var cell = new CellPixels(box.Width, box.Height);
        var target = 0;
        for (var y = box.Top; y < box.Bottom; y++)
        {
            var row = frame.Pixels.Slice(4 * (y * frame.Width + box.Left), 4 * box.Width);
            for (var x = 0; x < row.Length; x += 4)
            {
                cell._pixels[target++] = row[x];
                cell._pixels[target++] = row[x + 1];
                cell._pixels[target++] = row[x + 2];
            }
        }

        return cell;
    }

    /// <summary>
    /// The pixels near a colour, of all that are looked at: the sum of their colours, and how many they are. It is asked many times for each
    /// of a board's million pixels, so it does without <see cref="Rgb"/> in its loop.
    /// </summary>
    /// <param name="colour">The colour.</param>
    /// <param name="reach">How far a pixel may be from it, as <see cref="Rgb.Distance"/> tells.</param>
    /// <param name="isCounted">Which pixels count; null for all, of which each <see cref="Stride"/>th is looked at.</param>
    public (Rgb Sum, int Count) Near(Rgb colour, float reach, bool[]? isCounted)
    {
        var (red, green, blue, count) = (0f, 0f, 0f, 0);
        var stride = isCounted is null ? Stride : 1;
        for (var pixel = 0; pixel < Count; pixel += stride)
        {
            if (isCounted is not null && !isCounted[pixel])
                continue;
            float r = _pixels[3 * pixel], g = _pixels[3 * pixel + 1], b = _pixels[3 * pixel + 2];
            if (Math.Abs(r - colour.Red) > reach || Math.Abs(g - colour.Green) > reach || Math.Abs(b - colour.Blue) > reach)
                continue;
            red += r;
            green += g;
            blue += b;
            count++;
        }

        return (new(red, green, blue), count);
    }

    /// <summary>The most frequent colour among pixels.</summary>
    /// <param name="isCounted">Which pixels count; null for all.</param>
    public Rgb Mode(bool[]? isCounted)
    {
        const float Reach = 20;
        var counts = new int[Bins];
        var stride = isCounted is null ? Stride : 1;
        for (var pixel = 0; pixel < Count; pixel += stride)
        {
            if (isCounted is null || isCounted[pixel])
                counts[BinOf(pixel)]++;
        }

        var best = Array.IndexOf(counts, counts.Max());
        var mode = new Rgb((best >> 8 << 4) + 8, (best >> 4 & 15) * 16 + 8, (best & 15) * 16 + 8);
        // A colour on the border of two bins fills both: the mean of all that is near it counts.
        for (var pass = 0; pass < 2; pass++)
        {
            var (sum, count) = Near(mode, Reach, isCounted);
            if (count > 0)
                mode = sum * (1f / count);
        }

        return mode;
    }
}
