namespace Companion.Sight.Finding;

/// <summary>A grid seen from aside, drawn anew as a square.</summary>
/// <param name="Frame">The square picture, with a margin around the grid.</param>
/// <param name="Margin">The margin, in pixels.</param>
/// <param name="Side">The grid's side, in pixels.</param>
/// <param name="ToPhoto">Takes points of it back to the photograph.</param>
internal sealed record Straightened(Frame Frame, int Margin, int Side, Homography ToPhoto)
{
    // Fewer pixels than this are too few to read, and more are no gain.
    private const int LeastSide = 450, MostSide = 1350;
    private const float MarginPart = 0.04f;

    /// <summary>Draws it.</summary>
    /// <param name="photo">The photograph.</param>
    /// <param name="place">Where the grid is.</param>
    /// <returns>The square; null where the corners make no quadrilateral.</returns>
    public static Straightened? Of(Frame photo, GridPlace place)
    {
        var longest = Math.Max(
            Math.Max(Distance(place.TopLeft, place.TopRight), Distance(place.BottomLeft, place.BottomRight)),
            Math.Max(Distance(place.TopLeft, place.BottomLeft), Distance(place.TopRight, place.BottomRight)));
        var side = Math.Clamp((int)longest, LeastSide, MostSide);
        var margin = (int)(MarginPart * side);
        if (Homography.FromSquare(margin, margin, side, place) is not { } way)
            return null;
        var length = side + 2 * margin;
        // Where several pixels of the photograph fall on one, they are averaged.
        var samples = longest > 1.3f * side ? (int)Math.Ceiling(longest / side) : 1;
        var pixels = new byte[4 * length * length];
        for (var y = 0; y < length; y++)
        {
            for (var x = 0; x < length; x++)
                Sample(photo, way, x, y, samples, pixels.AsSpan(4 * (y * length + x), 4));
        }

        return new(new(length, length, pixels), margin, side, way);
    }

    private static void Sample(Frame photo, Homography way, int x, int y, int samples, Span<byte> target)
    {
        var (red, green, blue) = (0f, 0f, 0f);
        for (var sample = 0; sample < samples * samples; sample++)
        {
            var at = way[new(x + (sample % samples + 0.5f) / samples, y + (sample / samples + 0.5f) / samples)];
            var (px, py) = (Math.Clamp(at.X - 0.5f, 0, photo.Width - 1.001f), Math.Clamp(at.Y - 0.5f, 0, photo.Height - 1.001f));
            var (column, row) = ((int)px, (int)py);
            var (u, v) = (px - column, py - row);
            var first = photo.Pixels.Slice(4 * (row * photo.Width + column), 8);
            var second = row + 1 < photo.Height ? photo.Pixels.Slice(4 * ((row + 1) * photo.Width + column), 8) : first;
            float Mix(ReadOnlySpan<byte> above, ReadOnlySpan<byte> below, int channel) =>
                (above[channel] * (1 - u) + above[channel + 4] * u) * (1 - v) + (below[channel] * (1 - u) + below[channel + 4] * u) * v;
            (red, green, blue) = (red + Mix(first, second, 0), green + Mix(first, second, 1), blue + Mix(first, second, 2));
        }

        var count = samples * samples;
        (target[0], target[1], target[2], target[3]) = ((byte)(red / count + 0.5f), (byte)(green / count + 0.5f), (byte)(blue / count + 0.5f), 255);
    }

    private static float Distance(PixelPoint a, PixelPoint b) => MathF.Sqrt((a.X - b.X) * (a.X - b.X) + (a.Y - b.Y) * (a.Y - b.Y));
}
