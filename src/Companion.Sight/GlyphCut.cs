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
        var image = new float[GlyphImage.Side * GlyphImage.Side];
        AreaMeans.Of(
            patch.Ink,
            AreaMeans.Along(patch.Width, GlyphImage.Side, (across.From + across.To) / 2, step),
            AreaMeans.Along(patch.Height, GlyphImage.Side, (down.From + down.To) / 2, step),
            image);
        return new(ImmutableCollectionsMarshal.AsImmutableArray(Stretched(image)));
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
