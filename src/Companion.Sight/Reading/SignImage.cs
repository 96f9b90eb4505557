using System.Numerics.Tensors;

namespace Companion.Sight.Reading;

/// <summary>
/// A sign among what stands around it in its cell, brought to a common size: where a <see cref="GlyphImage"/> has a glyph's own ink alone,
/// this shows lines that go through it and end beside it, neighbours that touch it, and what covers it.
/// </summary>
internal static class SignImage
{
    /// <summary>Columns, and rows.</summary>
    public const int Side = 24;

    /// <summary>All ink; the sign's own; and how far each pixel is from any mixture of the ground's colour and the sign's.</summary>
    public const int Planes = 3;

    /// <summary>Values of one image: plane by plane, row by row, from 0 to 1.</summary>
    public const int Values = Planes * Side * Side;

    private const int Plane = Side * Side;

    // The sign's longer side fills so much, so that a quarter of it shows around it.
    private const int Body = 16;

    // A pixel that is so far from each mixture of two colours has none of them.
    private const float OtherColour = 64;

    /// <summary>Draws one.</summary>
    /// <param name="sign">The sign.</param>
    /// <param name="values">Where it is put: <see cref="Values"/> long.</param>
    public static void Draw(Sign sign, Span<float> values)
    {
        var (blob, ink) = (sign.Blob, sign.Ink);
        var step = Math.Max(blob.Width, blob.Height) / (float)Body;
        var (left, right) = Seen((blob.Left + blob.Right) / 2f, step, ink.Cell.Width);
        var (top, bottom) = Seen((blob.Top + blob.Bottom) / 2f, step, ink.Cell.Height);
        var (width, height) = (right - left, bottom - top);
        var (all, own, other) = (new float[width * height], new float[width * height], new float[width * height]);
        for (var y = top; y < bottom; y++)
        {
            var (from, to) = (y * ink.Cell.Width + left, (y - top) * width);
            TensorPrimitives.Divide(ink.Distance.AsSpan(from, width), blob.Peak, all.AsSpan(to, width));
            OtherColours(ink, sign.Colour, left, y, other.AsSpan(to, width));
            var row = y - blob.Top + InkPatch.Room;
            if ((uint)row >= (uint)sign.Patch.Height)
                continue;
            var (first, last) = (Math.Max(left, blob.Left - InkPatch.Room), Math.Min(right, blob.Right + InkPatch.Room));
            sign.Patch.Row(row)[(first - blob.Left + InkPatch.Room)..(last - blob.Left + InkPatch.Room)].CopyTo(own.AsSpan(to + first - left));
        }

        TensorPrimitives.Min(all, 1, all);
        TensorPrimitives.Divide(other, OtherColour, other);
        TensorPrimitives.Min(other, 1, other);
        var across = AreaMeans.Along(width, Side, (blob.Left + blob.Right) / 2f - left, step);
        var down = AreaMeans.Along(height, Side, (blob.Top + blob.Bottom) / 2f - top, step);
        AreaMeans.Of(all, across, down, values[..Plane]);
        AreaMeans.Of(own, across, down, values[Plane..(2 * Plane)]);
        AreaMeans.Of(other, across, down, values[(2 * Plane)..Values]);
    }

    private static void OtherColours(CellInk ink, Rgb colour, int x, int y, Span<float> distances)
    {
        var pixel = y * ink.Cell.Width + x;
        if (ink.Ground.IsFlat)
        {
            ink.Cell.DistancesToMix(pixel, ink.Ground.Middle, colour, distances);
            return;
        }

        for (var at = 0; at < distances.Length; at++)
            distances[at] = ink.Cell[pixel + at].DistanceToMix(ink.Ground.At(x + at, y), colour);
    }

    // From where to where the image reaches in the cell.
    private static (int From, int To) Seen(float middle, float step, int count)
    {
        var reach = (Side * step + 1) / 2;
        return (Math.Clamp((int)MathF.Floor(middle - reach), 0, count - 1), Math.Clamp((int)MathF.Ceiling(middle + reach), 1, count));
    }
}
