namespace Companion.Sight.Reading;

/// <summary>
/// How the lines through marks are drawn on a board: all go the same way. A mark can then be compared with a look that has such a line
/// painted through it, and a line that hides in the strokes of its digit is told from none.
/// </summary>
/// <param name="Right">How far the line's middle lies to the right of the digit's, as a part of the digit's height.</param>
/// <param name="Down">How far below.</param>
/// <param name="Length">From end to end, as a part of the digit's height.</param>
/// <param name="Angle">Its direction, in radians, as <see cref="Overlay.Angle"/>.</param>
internal readonly record struct StruckShape(float Right, float Down, float Length, float Angle)
{
    // So many lines tell how they are drawn.
    private const int Fewest = 2;

    /// <summary>How the lines of a board are drawn; null where too few were seen beyond doubt, or where they do not agree.</summary>
    /// <param name="lines">Lines that were seen beyond doubt.</param>
    public static StruckShape? Of(IReadOnlyList<Overlay> lines)
    {
        const float Near = 0.25f;
        if (lines.Count < Fewest)
            return null;
        var shape = new StruckShape(
            Median(lines.Select(line => line.Right)), Median(lines.Select(line => line.Down)), Median(lines.Select(line => line.Length)), Median(lines.Select(line => line.Angle)));
        return lines.Count(line => Math.Abs(line.Angle - shape.Angle) <= Near) * 3 >= lines.Count * 2 ? shape : null;
    }

    /// <summary>The pixels that such a line covers in a look, and how much of each: 0 to 1. It may reach out of it.</summary>
    /// <param name="look">The look, cut out with <see cref="InkPatch.Room"/>.</param>
    /// <param name="aside">How far aside it lies, in pixels.</param>
    /// <param name="half">Half of how thick it is, in pixels.</param>
    public (int X, int Y, float Part)[] Line(InkPlane look, float aside, float half)
    {
        var size = look.Height - 2f * InkPatch.Room;
        var (dx, dy) = (MathF.Cos(Angle), MathF.Sin(Angle));
        var (mx, my) = (look.Width / 2f + Right * size - aside * dy, look.Height / 2f + Down * size + aside * dx);
        var reach = Length * size / 2;
        // All of it lies within these rows, and in each within so much of it.
        var thick = half + 0.5f;
        var (across, along) = (Math.Abs(reach * dx) + thick + 1, Math.Abs(reach * dy) + thick + 1);
        var slant = Math.Max(1e-3f, Math.Abs(dy));
        var covered = new List<(int, int, float)>();
        for (var y = (int)MathF.Floor(my - along); y <= my + along; y++)
        {
            var v = y + 0.5f - my;
            var (centre, room) = (mx + v * dx / (dy < 0 ? -slant : slant), thick / slant + 1);
            for (var x = (int)MathF.Floor(Math.Max(mx - across, centre - room)); x <= Math.Min(mx + across, centre + room); x++)
            {
                var u = x + 0.5f - mx;
                var part = Math.Clamp(thick - Math.Abs(u * dy - v * dx), 0, Math.Min(1, 2 * half)) * Math.Clamp(reach + 0.5f - Math.Abs(u * dx + v * dy), 0, 1);
                if (part > 0)
                    covered.Add((x, y, part));
            }
        }

        return [.. covered];
    }

    private static float Median(IEnumerable<float> values)
    {
        float[] sorted = [.. values.Order()];
        return sorted[sorted.Length / 2];
    }
}
