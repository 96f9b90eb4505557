using System.Numerics.Tensors;
using System.Runtime.InteropServices;

namespace Companion.Sight;

/// <summary>Cuts a glyph out of a plane of ink: close around the ink, averaged over areas, contrast stretched.</summary>
internal static class GlyphCut
{
    // Less than this at its darkest is the noise of compression, not a glyph.
    private const float LeastInk = 0.08f;

    /// <summary>See <see cref="GlyphImage.Cut"/>.</summary>
    public static GlyphImage Of(InkPlane plane, PixelBox box)
    {
        var (left, right) = Range(box.Left, box.Right, plane.Width);
        var (top, bottom) = Range(box.Top, box.Bottom, plane.Height);
        if (left >= right || top >= bottom)
            return GlyphImage.Empty;

        var patch = new InkPlane(right - left, bottom - top, AboveGround(plane, left, right, top, bottom));
        var columns = new float[patch.Width];
        var rows = new float[patch.Height];
        for (var y = 0; y < rows.Length; y++)
            for (var x = 0; x < columns.Length; x++)
            {
                var ink = patch.Row(y)[x];
                columns[x] = Math.Max(columns[x], ink);
                rows[y] = Math.Max(rows[y], ink);
            }

        var peak = rows.Max();
        if (!(peak >= LeastInk))
            return GlyphImage.Empty;
        var across = Extent(columns, peak);
        var down = Extent(rows, peak);
        // Pixels of the picture to one of the image.
        var step = Math.Max(across.To - across.From, down.To - down.From) / GlyphImage.Body;
        return new(ImmutableCollectionsMarshal.AsImmutableArray(Stretched(Resampled(
            patch,
            Weights(patch.Width, (across.From + across.To) / 2, step),
            Weights(patch.Height, (down.From + down.To) / 2, step)))));
    }

    private static (int From, int To) Range(float from, float to, int count) =>
        ((int)Math.Clamp(MathF.Floor(from), 0, count), (int)Math.Clamp(MathF.Ceiling(to), 0, count));

    /// <summary>The ink in a box less what is there throughout: some grey that the plane took for ink.</summary>
    private static float[] AboveGround(InkPlane plane, int left, int right, int top, int bottom)
    {
        var (width, height) = (right - left, bottom - top);
        var ink = new float[width * height];
        for (var y = 0; y < height; y++)
            plane.Row(top + y)[left..right].CopyTo(ink.AsSpan(y * width));
        var ground = Ranked.At((float[])ink.Clone(), ink.Length / 20);
        // A bare stroke that fills the box has no ground in it: then the ground is what the plane says it is.
        if (ground < TensorPrimitives.Max<float>(ink) / 2)
            foreach (ref var value in ink.AsSpan())
                value = Math.Max(0, value - ground);
        return ink;
    }

    /// <summary>
    /// Where the ink begins and ends in a profile of darkest values. A soft edge is a pixel that the glyph covers in part: as dark as
    /// it is, so far the glyph reaches into it.
    /// </summary>
    private static (float From, float To) Extent(float[] profile, float peak)
    {
        var half = peak / 2;
        var first = Array.FindIndex(profile, value => value >= half);
        var last = Array.FindLastIndex(profile, value => value >= half);
        var from = first + 1 - (profile[first] + (first > 0 ? profile[first - 1] : 0)) / peak;
        var to = last + (profile[last] + (last + 1 < profile.Length ? profile[last + 1] : 0)) / peak;
        return to - from >= 1 ? (from, to) : ((from + to) / 2 - 0.5f, (from + to) / 2 + 0.5f);
    }

    /// <summary>For each pixel of the image along one axis, the pixels of the picture that it is the mean of, and their parts.</summary>
    private static (int First, float[] Parts)[] Weights(int count, float middle, float step)
    {
        var weights = new (int, float[])[GlyphImage.Side];
        // A window of one pixel at least, so that small glyphs come out smooth and not in squares.
        var window = Math.Max(step, 1);
        for (var index = 0; index < weights.Length; index++)
        {
            var start = middle + (index + 0.5f - GlyphImage.Side / 2f) * step - window / 2;
            var first = Math.Max(0, (int)MathF.Floor(start));
            var parts = new float[Math.Max(0, Math.Min(count, (int)MathF.Ceiling(start + window)) - first)];
            for (var part = 0; part < parts.Length; part++)
                parts[part] = Math.Max(0, Math.Min(first + part + 1, start + window) - Math.Max(first + part, start)) / window;
            weights[index] = (first, parts);
        }

        return weights;
    }

    private static float[] Resampled(InkPlane plane, (int First, float[] Parts)[] across, (int First, float[] Parts)[] down)
    {
        var ink = new float[GlyphImage.Side * GlyphImage.Side];
        for (var y = 0; y < GlyphImage.Side; y++)
        {
            var target = ink.AsSpan(y * GlyphImage.Side, GlyphImage.Side);
            for (var row = 0; row < down[y].Parts.Length; row++)
            {
                var source = plane.Row(down[y].First + row);
                var part = down[y].Parts[row];
                for (var x = 0; x < target.Length; x++)
                {
                    var sum = 0f;
                    var (first, parts) = across[x];
                    for (var column = 0; column < parts.Length; column++)
                        sum += parts[column] * source[first + column];
                    target[x] += part * sum;
                }
            }
        }

        return ink;
    }

    /// <summary>The darkest becomes 1: of a few pixels, so that a single one decides nothing.</summary>
    private static float[] Stretched(float[] ink)
    {
        const int Darkest = 12;
        var high = Math.Max(Ranked.At((float[])ink.Clone(), ink.Length - Darkest), LeastInk);
        foreach (ref var value in ink.AsSpan())
            value = Math.Min(1, value / high);
        return ink;
    }
}
