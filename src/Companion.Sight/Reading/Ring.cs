namespace Companion.Sight.Reading;

/// <summary>A ring around the middle of a cell, which marks may touch or cross: it is taken away, and their ink is kept.</summary>
internal sealed class Ring
{
    // Of the cell: where the middle may be and how large the ring is; how thick its line is at most.
    private const float OffMiddle = 0.06f, Smallest = 0.27f, Largest = 0.52f, Thickest = 0.1f;

    // Of all directions: in how many the ring is seen, and in how many there is ground on either side of its line.
    private const int Directions = 96;
    private const float Seen = 0.9f, Bare = 0.5f;

    // Pixels at either edge of the line in which it only fades.
    private const float Soft = 1;

    private static readonly float[] _slants = [0, -0.4f, 0.4f, -0.8f, 0.8f];

    private static readonly (float X, float Y)[] _around =
        [.. Enumerable.Range(0, Directions).Select(direction => MathF.SinCos(direction * MathF.Tau / Directions)).Select(at => (at.Cos, at.Sin))];

    private readonly CellInk _ink;
    private readonly float _x, _y, _radius, _stretch, _half;

    private Ring(CellInk ink, float x, float y, float radius, float stretch, float half) =>
        (_ink, _x, _y, _radius, _stretch, _half) = (ink, x, y, radius, stretch, half);

    /// <summary>Looks for one.</summary>
    /// <param name="blob">Ink that may be a ring with marks on it.</param>
    /// <param name="ink">Its cell.</param>
    /// <returns>The ring; null where there is none.</returns>
    public static Ring? Of(Blob blob, CellInk ink)
    {
        var (box, stretch) = (ink.Box, ink.Box.CellHeight / ink.Box.CellWidth);
        if (Math.Min(blob.Width / box.CellWidth, blob.Height / box.CellHeight) < 2 * Smallest)
            return null;
        var (x, y) = (box.X + box.CellWidth / 2 - box.Left, box.Y + box.CellHeight / 2 - box.Top);
        var best = new Ring(ink, x, y, 0, stretch, 0);
        var most = 0f;
        var reach = Math.Max(1, (int)(OffMiddle * box.CellWidth));
        // Every other pixel first, then half a pixel around the best.
        foreach (var (step, range) in ((float, int)[])[(2, (reach + 1) / 2), (0.5f, 3)])
        {
            var (middle, isFirst) = (best, step > 1);
            for (var down = -range; down <= range; down++)
            {
                for (var across = -range; across <= range; across++)
                {
                    var (from, to) = isFirst ? (Smallest * box.CellWidth, Largest * box.CellWidth) : (middle._radius - 1.5f, middle._radius + 1.5f);
                    for (var radius = from; radius <= to; radius += isFirst ? 1 : 0.5f)
                    {
                        var ring = new Ring(ink, middle._x + across * step, middle._y + down * step, radius, stretch, 0);
                        if (ring.Strength() is var strength && strength > most)
                            (best, most) = (ring, strength);
                    }
                }
            }
        }

        return best.Measured();
    }

    /// <summary>Takes it out of its cell. What lies on it stays where its colour tells, and where ink goes on at both sides of the line.</summary>
    public void TakeOut()
    {
        var (ring, marks) = (Colour(IsBareRing, 0.5f), Colour(IsMark, 0.9f));
        var width = _ink.Cell.Width;
        var kept = new List<(int Pixel, float Distance)>();
        for (var pixel = 0; pixel < _ink.Distance.Length; pixel++)
        {
            var (away, dx, dy) = Away(pixel % width, pixel / width);
            if (Math.Abs(away) > _half + Soft)
                continue;
            var own = ring is { } line && marks is { } mark ? Own(pixel, away, line, mark) : 0;
            kept.Add((pixel, Math.Min(_ink.Distance[pixel], Math.Max(Across(pixel, away, dx, dy), own))));
        }

        foreach (var (pixel, distance) in kept)
            _ink.Distance[pixel] = distance;
    }

    // Ink at both sides that a straight stroke through here would join, whether it crosses the line upright or aslant.
    private float Across(int pixel, float away, float dx, float dy)
    {
        var (x, y) = (pixel % _ink.Cell.Width + 0.5f, pixel / _ink.Cell.Width + 0.5f);
        var most = 0f;
        foreach (var slant in _slants)
        {
            // Away from the middle, and aside by so much for each pixel.
            var (ax, ay) = (dx - slant * dy, (dy + slant * dx) * _stretch);
            var (outward, inward) = (_half + Soft + 0.5f - away, _half + Soft + 0.5f + away);
            most = Math.Max(most, Math.Min(At(x + ax * outward, y + ay * outward), At(x - ax * inward, y - ay * inward)));
        }

        return most;
    }

    private float Strength()
    {
        var sum = 0f;
        foreach (var (dx, dy) in _around)
            sum += Math.Min(At(_radius, dx, dy), _ink.Peak);
        return sum;
    }

    // How thick the line is, if there is one all around.
    private Ring? Measured()
    {
        var strengths = Array.ConvertAll(_around, at => At(_radius, at.X, at.Y));
        var usual = Ranked.At((float[])strengths.Clone(), Directions / 2);
        if (usual <= _ink.Noise || strengths.Count(strength => strength >= usual / 3) < Seen * Directions)
            return null;
        var (inner, outer) = (new float[Directions], new float[Directions]);
        for (var direction = 0; direction < Directions; direction++)
            (inner[direction], outer[direction]) = (Until(direction, -0.5f, usual / 2), Until(direction, 0.5f, usual / 2));
        var (within, without) = (Ranked.At(inner, Directions / 2), Ranked.At(outer, Directions / 2));
        var half = (within + without) / 2;
        var measured = new Ring(_ink, _x, _y, _radius + (without - within) / 2, _stretch, half);
        var bare = _around.Count(at => measured.IsBare(at.X, at.Y));
        return half <= Thickest / 2 * _ink.Box.CellWidth + 0.5f && bare >= Bare * Directions ? measured : null;
    }

    private float Until(int direction, float step, float least)
    {
        var (dx, dy) = _around[direction];
        var radius = _radius;
        for (var most = Thickest * _ink.Box.CellWidth + 2; Math.Abs(radius - _radius) < most && At(radius, dx, dy) >= least;)
            radius += step;
        return Math.Abs(radius - _radius) - 0.25f;
    }

    private bool IsBare(float dx, float dy) =>
        At(_radius + _half + 2, dx, dy) <= _ink.Noise && At(_radius - _half - 2, dx, dy) <= _ink.Noise;

    private bool IsBareRing(int pixel)
    {
        var (away, dx, dy) = Away(pixel % _ink.Cell.Width, pixel / _ink.Cell.Width);
        return Math.Abs(away) <= Math.Max(0.5f, _half - 0.5f) && IsBare(dx, dy);
    }

    private bool IsMark(int pixel) =>
        Math.Abs(Away(pixel % _ink.Cell.Width, pixel / _ink.Cell.Width).Away) > _half + Soft + 0.5f && _ink.Distance[pixel] > _ink.Noise;

    // The colour of what is meant: of a part of it by its distance from the ground, without soft edges and what lies on it.
    private Rgb? Colour(Func<int, bool> isMeant, float part)
    {
        const float Near = 0.75f;
        const int Few = 3;
        var pixels = Enumerable.Range(0, _ink.Distance.Length).Where(isMeant).ToList();
        if (pixels.Count < Few)
            return null;
        var usual = Ranked.At([.. pixels.Select(pixel => _ink.Distance[pixel])], (int)(part * (pixels.Count - 1)));
        var (sum, count) = (default(Rgb), 0);
        foreach (var pixel in pixels.Where(pixel => _ink.Distance[pixel] >= Near * usual && _ink.Distance[pixel] <= usual / Near))
            (sum, count) = (sum + _ink.Cell[pixel], count + 1);
        return sum * (1f / count);
    }

    // How much of a pixel is the marks' ink: it is not of the colour that the ring has there, and nearer to theirs.
    private float Own(int pixel, float away, Rgb ring, Rgb mark)
    {
        const float Uncertain = 0.3f;
        var ground = _ink.Ground.At(pixel % _ink.Cell.Width, pixel / _ink.Cell.Width);
        var part = _half + 0.5f - Math.Abs(away);
        var (least, most) = (Math.Clamp(part - Uncertain, 0, 1), Math.Clamp(part + Uncertain, 0, 1));
        var colour = _ink.Cell[pixel];
        var other = Math.Max(0, colour.DistanceToMix(ground + (ring - ground) * least, ground + (ring - ground) * most) - _ink.Noise / 2);
        return other / Math.Max(1, other + colour.Distance(mark)) * mark.Distance(ground);
    }

    private (float Away, float X, float Y) Away(int x, int y)
    {
        var (dx, dy) = (x + 0.5f - _x, (y + 0.5f - _y) / _stretch);
        var length = Math.Max(0.01f, MathF.Sqrt(dx * dx + dy * dy));
        return (length - _radius, dx / length, dy / length);
    }

    private float At(float radius, float dx, float dy) => At(_x + radius * dx, _y + radius * dy * _stretch);

    private float At(float x, float y)
    {
        var (column, row) = ((int)MathF.Floor(x), (int)MathF.Floor(y));
        return column < 0 || row < 0 || column >= _ink.Cell.Width || row >= _ink.Cell.Height ? 0 : _ink.Distance[row * _ink.Cell.Width + column];
    }
}
