using System.Numerics.Tensors;

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
    // In pixels: where the digit may lie beside its best place, how far aside a line may lie, and half of how thick it may be.
    private static readonly (int Right, int Down)[] _near = [(0, 0), (-1, 0), (1, 0), (0, -1), (0, 1)];
    private static readonly float[] _asides = [-1, -0.5f, 0, 0.5f, 1];
    private static readonly float[] _halves = [0.5f, 0.9f];

    // A better place makes less of a difference than this.
    private const float MuchMore = 1.8f;

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

    /// <summary>Compares a mark with a look as it is, and with a line through it, each at its best place.</summary>
    /// <param name="patch">The mark, cut out with <see cref="InkPatch.Room"/>.</param>
    /// <param name="look">The look, cut out likewise.</param>
    /// <param name="reach">What differs by much more than this is not looked at closely.</param>
    public LineFinding Compare(InkPlane patch, InkPlane look, float reach = float.MaxValue)
    {
        var (x, y) = Overlay.Shift(patch, look);
        const int Free = 2;
        var (left, top) = (Math.Min(0, x) - Free, Math.Min(0, y) - Free);
        var (width, height) = (Math.Max(patch.Width, x + look.Width) + Free - left, Math.Max(patch.Height, y + look.Height) + Free - top);
        var own = Overlay.Placed(patch, -left, -top, width, height);
        var size = look.Height - 2f * InkPatch.Room;
        var (plain, struck) = (float.MaxValue, float.MaxValue);
        // The place first, then the line's.
        var (best, middle) = (Array.Empty<float>(), default(PixelPoint));
        foreach (var (right, down) in _near)
        {
            var of = Overlay.Placed(look, x - left + right, y - top + down, width, height);
            var at = new PixelPoint(x - left + right + look.Width / 2f, y - top + down + look.Height / 2f);
            plain = Math.Min(plain, Difference(own, of, width, []));
            var difference = Difference(own, of, width, Line(at, size, 0, _halves[0], width, height));
            if (difference < struck)
                (struck, best, middle) = (difference, of, at);
            if (Math.Min(plain, struck) > MuchMore * reach)
                return new(plain, struck);
        }

        foreach (var half in _halves)
        {
            foreach (var aside in _asides)
                struck = Math.Min(struck, Difference(own, best, width, Line(middle, size, aside, half, width, height)));
        }

        return new(plain, struck);
    }

    private static float Median(IEnumerable<float> values)
    {
        float[] sorted = [.. values.Order()];
        return sorted[sorted.Length / 2];
    }

    // The pixels that the line covers, and how much of each.
    private List<(int Pixel, float Part)> Line(PixelPoint middle, float size, float aside, float half, int width, int height)
    {
        var (dx, dy) = (MathF.Cos(Angle), MathF.Sin(Angle));
        var (mx, my) = (middle.X + Right * size - aside * dy, middle.Y + Down * size + aside * dx);
        var reach = Length * size / 2;
        // All of it lies within this box, and in each row within so much of it.
        var thick = half + 0.5f;
        var (across, along) = (Math.Abs(reach * dx) + thick + 1, Math.Abs(reach * dy) + thick + 1);
        var (left, right) = (Math.Max(0, (int)(mx - across)), Math.Min(width, (int)(mx + across) + 1));
        var (top, bottom) = (Math.Max(0, (int)(my - along)), Math.Min(height, (int)(my + along) + 1));
        var slant = Math.Max(1e-3f, Math.Abs(dy));
        var covered = new List<(int, float)>();
        for (var y = top; y < bottom; y++)
        {
            var v = y + 0.5f - my;
            var (centre, room) = (mx + v * dx / (dy < 0 ? -slant : slant), thick / slant + 1);
            for (var x = (int)Math.Max(left, centre - room); x < Math.Min(right, centre + room); x++)
            {
                var u = x + 0.5f - mx;
                var part = Math.Clamp(thick - Math.Abs(u * dy - v * dx), 0, Math.Min(1, 2 * half)) * Math.Clamp(reach + 0.5f - Math.Abs(u * dx + v * dy), 0, 1);
                if (part > 0)
                    covered.Add((y * width + x, part));
            }
        }

        return covered;
    }

    private static float Difference(float[] own, float[] of, int width, List<(int Pixel, float Part)> line)
    {
        const float Covered = 0.5f, Faintest = 0.4f, Strongest = 1.6f, FaintestLine = 0.5f;
        var (product, squares, ink, cover) = (TensorPrimitives.Dot<float>(own, of), TensorPrimitives.SumOfSquares<float>(of), 0f, 0f);
        foreach (var (pixel, part) in line)
        {
            (product, squares) = (product - part * own[pixel] * of[pixel], squares - part * of[pixel] * of[pixel]);
            if (part > Covered)
                (ink, cover) = (ink + part * own[pixel], cover + part * part);
        }

        var strength = Math.Clamp(product / Math.Max(1e-3f, squares), Faintest, Strongest);
        var dark = Math.Clamp(ink / Math.Max(1e-3f, cover), FaintestLine, 1);
        var painted = new float[own.Length];
        TensorPrimitives.Multiply(of, strength, painted);
        TensorPrimitives.Min(painted, 1, painted);
        foreach (var (pixel, part) in line)
            painted[pixel] += part * (dark - painted[pixel]);
        TensorPrimitives.Subtract(own, painted, painted);
        return TensorPrimitives.SumOfMagnitudes<float>(Overlay.Blurred(painted, width)) / (strength * Math.Max(1e-3f, TensorPrimitives.Sum<float>(of)));
    }
}
