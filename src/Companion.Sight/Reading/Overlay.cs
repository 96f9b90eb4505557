using System.Numerics.Tensors;

namespace Companion.Sight.Reading;

/// <summary>
/// One mark's ink laid over another's of the same board, where both fit best: what of the other is missing in it, and what it has
/// beyond that. Both are parts of the other's ink, after a slight blur in which edges that lie a little differently cancel out.
/// </summary>
/// <param name="Missing">The ink that is missing.</param>
/// <param name="Extra">The ink beyond, with a line through the mark.</param>
/// <param name="Line">What of the ink beyond lies on one straight line through the middle; 0 where there is no such line.</param>
/// <param name="Length">How long that line is, as a part of the other mark's height.</param>
/// <param name="Density">How much ink it has to one pixel of its length, 1 for a full line of one pixel.</param>
/// <param name="Angle">Its direction, in radians: 0 for a level line, negative for one that rises to the right.</param>
/// <param name="Right">How far its middle lies to the right of the other mark's, as a part of that one's height.</param>
/// <param name="Down">How far below.</param>
internal readonly record struct Overlay(float Missing, float Extra, float Line, float Length, float Density, float Angle, float Right, float Down)
{
    // How faint or strong, beside the other, one mark of a board may be.
    private const float Weakest = 0.5f, Strongest = 1.6f;

    // A line is at most so thick, as a part of the height, and passes the middle at most so far away.
    private const float Thickness = 0.16f, OffMiddle = 0.27f;

    // Below the first part of the ink nothing is a line, from the second on it is one for certain.
    private const float LeastLine = 0.1f, ClearLine = 0.16f, Shortest = 0.6f;

    // The same of its density: an edge that lies a little differently is fainter than a line.
    private const float Suspicion = 0.33f, LeastDensity = 0.52f, ClearDensity = 0.6f;

    // A line that reaches so far out of the mark is one, however faint.
    private const float FaintLine = 0.07f, Beyond = 1.15f;

    // Most of what is beyond is on the line.
    private const float Mostly = 0.55f;

    // A line steeper than this goes along a digit, not through it: the sine of its angle.
    private const float Steepest = 0.9f;

    /// <summary>Whether there is something like a line, and somebody has to look.</summary>
    public bool IsSuspicious => Line >= Mostly * Extra
        && ((Line >= LeastLine && Density >= Suspicion && Length >= Shortest) || (Line >= FaintLine && Length >= Beyond));

    /// <summary>Whether a line like others of the board may hide in the mark's own strokes.</summary>
    /// <param name="angles">The directions of lines that were seen beyond doubt.</param>
    public bool MayHide(IReadOnlyList<float> angles)
    {
        const float Hidden = 0.035f, Short = 0.45f, Partly = 0.4f, Near = 0.25f;
        var angle = Angle;
        return Line >= Hidden && Length >= Short && Line >= Partly * Extra && angles.Any(other => Math.Abs(other - angle) <= Near);
    }

    /// <summary>Whether a line seems to go through the mark.</summary>
    public bool MayBeStruck => IsSuspicious && Density >= LeastDensity;

    /// <summary>Whether a line goes through the mark beyond doubt.</summary>
    public bool IsStruck => MayBeStruck && Line >= ClearLine && Density >= ClearDensity;

    /// <summary>The ink that differs, without the line where there is one.</summary>
    public float Astray => MayBeStruck ? Missing + Extra - Line : Missing + Extra;

    /// <summary>Lays one over another.</summary>
    /// <param name="patch">The mark, cut out with <see cref="InkPatch.Room"/>.</param>
    /// <param name="other">The other, cut out likewise.</param>
    public static Overlay Of(InkPlane patch, InkPlane other)
    {
        var (x, y) = Shift(patch, other);
        // The common area has both in it, and a border for the blur.
        var (left, top) = (Math.Min(0, x) - 1, Math.Min(0, y) - 1);
        var (width, height) = (Math.Max(patch.Width, x + other.Width) + 1 - left, Math.Max(patch.Height, y + other.Height) + 1 - top);
        using var first = Placed(patch, -left, -top, width, height);
        using var second = Placed(other, x - left, y - top, width, height);
        var own = first.Values;
        var of = second.Values;
        var strength = Math.Clamp(TensorPrimitives.Dot<float>(own, of) / Math.Max(1e-3f, TensorPrimitives.SumOfSquares<float>(of)), Weakest, Strongest);
        var all = strength * Math.Max(1e-3f, TensorPrimitives.Sum<float>(of));
        TensorPrimitives.MultiplyAdd(of, -strength, own, own);
        Blur(own, of, width);
        var beyond = own;
        var (sum, magnitudes) = (TensorPrimitives.Sum<float>(beyond), TensorPrimitives.SumOfMagnitudes<float>(beyond));
        var (missing, extra) = ((magnitudes - sum) / 2, (magnitudes + sum) / 2);
        var digit = (X: x - left + other.Width / 2f, Y: y - top + other.Height / 2f, Height: other.Height - 2f * InkPatch.Room);
        var (line, length, angle, middle) = LineIn(beyond, width, digit);
        return new(
            missing / all, extra / all, line / all, length / digit.Height, line / strength / Math.Max(1, length), angle,
            (middle.X - digit.X) / digit.Height, (middle.Y - digit.Y) / digit.Height);
    }

    /// <summary>Where the products of two planes are greatest: how far the other lies to the right and below.</summary>
    /// <param name="patch">The one.</param>
    /// <param name="other">The other.</param>
    internal static (int X, int Y) Shift(InkPlane patch, InkPlane other)
    {
        var (across, down) = (patch.Width - other.Width, patch.Height - other.Height);
        var (left, right, top, bottom) = (Math.Min(0, across) - 1, Math.Max(0, across) + 1, Math.Min(0, down) - 1, Math.Max(0, down) + 1);
        // Both in rows of the same length, ground beside them: each place is one product of two strips.
        var width = other.Width + right - left;
        using var own = Placed(patch, -left, -top, width, other.Height + bottom - top);
        using var strip = Placed(other, 0, 0, width, other.Height);
        var of = strip.Values[..^(right - left)];
        var (best, at) = (-1f, (0, 0));
        for (var y = top; y <= bottom; y++)
        {
            for (var x = left; x <= right; x++)
            {
                var sum = TensorPrimitives.Dot<float>(own.Values.Slice((y - top) * width + x - left, of.Length), of);
                if (sum > best)
                    (best, at) = (sum, (x, y));
            }
        }

        return at;
    }

    /// <summary>A plane in a larger one, ground all around.</summary>
    /// <param name="plane">The plane.</param>
    /// <param name="x">Where its first column comes.</param>
    /// <param name="y">Where its first row comes.</param>
    /// <param name="width">Columns of the larger one.</param>
    /// <param name="height">Its rows.</param>
    internal static Scratch Placed(InkPlane plane, int x, int y, int width, int height)
    {
        var placed = new Scratch(width * height);
        Place(plane, x, y, width, placed.Values);
        return placed;
    }

    /// <summary>Puts a plane into a larger one, on ground.</summary>
    /// <param name="plane">The plane.</param>
    /// <param name="x">Where its first column comes.</param>
    /// <param name="y">Where its first row comes.</param>
    /// <param name="width">Columns of the larger one.</param>
    /// <param name="placed">The larger one.</param>
    internal static void Place(InkPlane plane, int x, int y, int width, Span<float> placed)
    {
        for (var row = 0; row < plane.Height; row++)
            plane.Row(row).CopyTo(placed[((row + y) * width + x)..]);
    }

    /// <summary>Mixes each value of a plane with those of its neighbours; its outermost rows become ground.</summary>
    /// <param name="plane">The plane.</param>
    /// <param name="spare">As long as the plane; what is in it is lost.</param>
    /// <param name="width">The plane's columns.</param>
    internal static void Blur(Span<float> plane, Span<float> spare, int width)
    {
        Mix(plane, spare, 1);
        Mix(spare, plane, width);
        TensorPrimitives.Multiply(plane, 1 / 16f, plane);
    }

    // Four times as strong.
    private static void Mix(ReadOnlySpan<float> plane, Span<float> mixed, int step)
    {
        var inner = mixed[step..^step];
        TensorPrimitives.Add(plane[..^(2 * step)], plane[(2 * step)..], inner);
        TensorPrimitives.MultiplyAdd(plane[step..^step], 2, inner, inner);
        mixed[..step].Clear();
        mixed[^step..].Clear();
    }

    // The axis along which what is beyond spreads the most.
    private static (float Ink, float Length, float Angle, PixelPoint Middle) LineIn(ReadOnlySpan<float> beyond, int width, (float X, float Y, float Height) digit)
    {
        const float Noise = 0.08f;
        var (sum, x, y, xx, xy, yy) = (0f, 0f, 0f, 0f, 0f, 0f);
        for (var pixel = Above.Next(beyond, 0, Noise); pixel < beyond.Length; pixel = Above.Next(beyond, pixel + 1, Noise))
        {
            var (ink, u, v) = (beyond[pixel], pixel % width + 0.5f, pixel / width + 0.5f);
            (sum, x, y, xx, xy, yy) = (sum + ink, x + ink * u, y + ink * v, xx + ink * u * u, xy + ink * u * v, yy + ink * v * v);
        }

        if (sum <= 0)
            return default;
        (x, y) = (x / sum, y / sum);
        (xx, xy, yy) = (xx / sum - x * x, xy / sum - x * y, yy / sum - y * y);
        var angle = 0.5f * MathF.Atan2(2 * xy, xx - yy);
        var (dx, dy) = (MathF.Cos(angle), MathF.Sin(angle));
        if (Math.Abs(dy) > Steepest || Math.Abs((digit.X - x) * dy - (digit.Y - y) * dx) > OffMiddle * digit.Height)
            return default;
        var half = Math.Max(1.6f, Thickness * digit.Height / 2 + 1);
        var (on, from, to) = (0f, float.MaxValue, float.MinValue);
        for (var pixel = Above.Next(beyond, 0, Noise); pixel < beyond.Length; pixel = Above.Next(beyond, pixel + 1, Noise))
        {
            var (u, v) = (pixel % width + 0.5f - x, pixel / width + 0.5f - y);
            if (Math.Abs(u * dy - v * dx) > half)
                continue;
            on += beyond[pixel];
            (from, to) = (Math.Min(from, u * dx + v * dy), Math.Max(to, u * dx + v * dy));
        }

        return (on, to - from, angle, new(x + dx * (from + to) / 2, y + dy * (from + to) / 2));
    }
}
