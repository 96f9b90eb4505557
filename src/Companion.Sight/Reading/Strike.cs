namespace Companion.Sight.Reading;

/// <summary>A straight line through a small digit.</summary>
internal static class Strike
{
    // Of the line: how much of it must be ink.
    private const float Unbroken = 0.93f;

    // Of the glyph's height: how far the line must stand free at both ends, where what else would spoil that, how thick it may be.
    private const float Free = 0.07f, ClearlyFree = 0.13f, Beside = 0.3f, Thickest = 0.2f;

    // Of all ink, what the digit itself has at least.
    private const float Kept = 0.3f;

    // How far from the middle of the digit the line may pass, as a part of its height.
    private const float OffMiddle = 0.26f, Level = 0.25f;

    private const float IsInk = 0.4f;

    // Between these heights, from the top (0) to the bottom (1), a level line is one; the bar of a 4 lies lower.
    private const float HighestLevel = 0.33f, LowestLevel = 0.61f;
    private const float Spanning = 0.93f;

    /// <summary>What stays of a glyph without the line through it.</summary>
    /// <param name="blob">The glyph.</param>
    /// <param name="ink">Its cell.</param>
    /// <returns>
    /// For each line that might be one, the rest, whether its ends stand so free that it is one for certain, and whether they stand free at
    /// all. The gap of the line is closed where ink goes on at both sides of it.
    /// </returns>
    public static IEnumerable<(InkPlane Remainder, bool IsClear, bool IsFree)> Rests(Blob blob, CellInk ink)
    {
        var plane = InkPatch.Of(blob, ink);
        foreach (var line in Lines(plane))
        {
            if (Rest(plane, line) is { } rest)
                yield return rest;
        }
    }

    private static IEnumerable<(float X1, float Y1, float X2, float Y2)> Lines(InkPlane plane)
    {
        var ink = (from y in Enumerable.Range(0, plane.Height) from x in Enumerable.Range(0, plane.Width) where plane.Row(y)[x] >= 0.4f select (X: x, Y: y)).ToList();
        if (ink.Count == 0)
            yield break;
        var (left, right) = (ink.Min(at => at.X), ink.Max(at => at.X));
        // A level line reaches farthest to both sides at nearly the same height.
        var (leftY, rightY) = ((float)ink.Where(at => at.X == left).Average(at => at.Y), (float)ink.Where(at => at.X == right).Average(at => at.Y));
        yield return (left, leftY, right, rightY);
        var (rise, fall) = (ink.MinBy(at => at.X - at.Y), ink.MaxBy(at => at.X - at.Y));
        yield return (rise.X, rise.Y, fall.X, fall.Y);
        var (first, last) = (ink.MinBy(at => at.X + at.Y), ink.MaxBy(at => at.X + at.Y));
        yield return (first.X, first.Y, last.X, last.Y);
    }

    private static (InkPlane Remainder, bool IsClear, bool IsFree)? Rest(InkPlane plane, (float X1, float Y1, float X2, float Y2) line)
    {
        var (dx, dy) = (line.X2 - line.X1, line.Y2 - line.Y1);
        var length = MathF.Sqrt(dx * dx + dy * dy);
        if (length < 4)
            return null;
        (dx, dy) = (dx / length, dy / length);
        var samples = (int)(2 * length);
        var covered = 0;
        for (var sample = 0; sample <= samples; sample++)
            covered += At(plane, line.X1 + dx * sample / 2f, line.Y1 + dy * sample / 2f) >= IsInk ? 1 : 0;
        if (covered < Unbroken * (samples + 1))
            return null;
        var isLevel = Math.Abs(dy) < Level;
        var depth = ((line.Y1 + line.Y2) / 2 - InkPatch.Room + 0.5f) / (plane.Height - 2 * InkPatch.Room);
        if (isLevel && depth is < HighestLevel or > LowestLevel)
            return null;
        var (first, second) = (FreeEnd(plane, line.X1, line.Y1, dx, dy, length), FreeEnd(plane, line.X2, line.Y2, -dx, -dy, length));
        var free = Math.Min(first?.Length ?? 0, second?.Length ?? 0);
        // A line as long as the digit is wide has no free ends; but no stroke of a digit goes level through the middle from edge to edge.
        var spans = isLevel && length >= Spanning * (plane.Width - 2 * InkPatch.Room - 1);
        var isFree = free >= Math.Max(2, Free * plane.Height);
        if (!isFree && !spans)
            return null;
        var width = Math.Min(first?.Width ?? int.MaxValue, second?.Width ?? int.MaxValue);
        width = width == int.MaxValue ? Math.Max(1, (int)(Thickest / 2 * plane.Height)) : width;
        var isClear = free >= Math.Max(3, ClearlyFree * plane.Height);
        return Remove(plane, line, dx, dy, width / 2f + 0.6f) is { } kept ? (kept, isClear, isFree) : null;
    }

    // From one end on, as long as there is nothing but the line; and how thick it is there.
    private static (float Length, int Width)? FreeEnd(InkPlane plane, float x, float y, float dx, float dy, float length)
    {
        var reach = (int)Math.Max(3, Beside * plane.Height);
        var widest = 0;
        for (var step = 0f; step < length / 2; step += 0.5f)
        {
            var width = 0;
            var isFree = true;
            for (var away = -reach; away <= reach; away++)
            {
                var isInk = At(plane, x + dx * step + dy * away, y + dy * step - dx * away) >= IsInk;
                width += isInk ? 1 : 0;
                isFree &= !isInk || Math.Abs(away) <= Math.Max(2, Thickest * plane.Height / 2);
            }

            if (!isFree || width > Math.Max(3, Thickest * plane.Height))
                return widest == 0 ? null : (step, widest);
            widest = Math.Max(widest, width);
        }

        return (length / 2, widest);
    }

    private static InkPlane? Remove(InkPlane plane, (float X1, float Y1, float X2, float Y2) line, float dx, float dy, float half)
    {
        var kept = plane.Ink.ToArray();
        var (left, right, top, bottom) = (plane.Width, 0, plane.Height, 0);
        for (var y = 0; y < plane.Height; y++)
        {
            for (var x = 0; x < plane.Width; x++)
            {
                var away = (x - line.X1) * dy - (y - line.Y1) * dx;
                var (column, row) = (x, y);
                float Beyond(float step) => At(plane, column + dy * step, row - dx * step);
                if (Math.Abs(away) <= half)
                    kept[y * plane.Width + x] = Math.Min(Beyond(half + 1 - away), Beyond(-half - 1 - away));
                if (kept[y * plane.Width + x] >= IsInk)
                    (left, right, top, bottom) = (Math.Min(left, x), Math.Max(right, x + 1), Math.Min(top, y), Math.Max(bottom, y + 1));
            }
        }

        var (middleX, middleY) = ((left + right) / 2f, (top + bottom) / 2f);
        var past = Math.Abs((middleX - line.X1) * dy - (middleY - line.Y1) * dx);
        var isThrough = right > left && past <= OffMiddle * (bottom - top) && kept.Sum() >= Kept * plane.Ink.ToArray().Sum();
        return isThrough ? new(plane.Width, plane.Height, kept) : null;
    }

    private static float At(InkPlane plane, float x, float y)
    {
        var (column, row) = ((int)MathF.Round(x), (int)MathF.Round(y));
        return column < 0 || row < 0 || column >= plane.Width || row >= plane.Height ? 0 : plane.Row(row)[column];
    }
}
