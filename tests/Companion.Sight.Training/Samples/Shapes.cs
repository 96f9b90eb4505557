using SkiaSharp;

namespace Companion.Sight.Samples;

/// <summary>Draws plain shapes that stand in cells or are left of lines, fills and pointers.</summary>
internal static class Shapes
{
    // From here on a line can be so thin beside its length that it is no digit, by its look alone.
    private const float Tall = 40;

    private static readonly Func<Random, SKPath>[] Kinds =
    [
        Arrow, Triangle, Dot, Ring, Square, Cross, Tick, Star, Bar, Bar, Corner, Corner, Junction, Blot, Blot, Hatching, Hatching, Pointer,
    ];

    /// <summary>A shape, as high or as wide as is said.</summary>
    public static Subject Pick(Random random, float height)
    {
        using var unit = height > Tall && random.Chance(0.08) ? Hairline(random) : random.Pick(Kinds)(random);
        return Subject.Of(GlyphSample.NoDigit, "", Scaled(unit, height, height)) with { MayBeStruck = false };
    }

    private static SKPath Scaled(SKPath path, float width, float height)
    {
        var scaled = new SKPath();
        path.Transform(SKMatrix.CreateScale(width, height), scaled);
        return scaled;
    }

    private static SKPath Turned(SKPath path, float degrees)
    {
        path.Transform(SKMatrix.CreateRotationDegrees(degrees));
        return path;
    }

    private static SKPath Lines(float thickness, params (float X, float Y)[][] lines)
    {
        using var strokes = new SKPathBuilder();
        foreach (var line in lines)
            Add(strokes, line);
        using var path = strokes.Detach();
        using var pen = new SKPaint { Style = SKPaintStyle.Stroke, StrokeWidth = thickness };
        return pen.GetFillPath(path) ?? throw new InvalidOperationException("There was no line to draw.");
    }

    private static SKPath Polygon(params (float X, float Y)[] corners)
    {
        using var path = new SKPathBuilder();
        Add(path, corners);
        path.Close();
        return path.Detach();
    }

    private static void Add(SKPathBuilder path, (float X, float Y)[] points)
    {
        path.MoveTo(points[0].X, points[0].Y);
        foreach (var (x, y) in points[1..])
            path.LineTo(x, y);
    }

    private static SKPath Oval(SKRect place)
    {
        using var path = new SKPathBuilder();
        path.AddOval(place);
        return path.Detach();
    }

    private static SKPath Arrow(Random random)
    {
        var (shaft, head) = (random.Between(0.06f, 0.16f), random.Between(0.2f, 0.4f));
        var arrow = random.Chance(0.5)
            ? Polygon(
                (-0.5f, -shaft / 2), (0.5f - head, -shaft / 2), (0.5f - head, -head), (0.5f, 0),
                (0.5f - head, head), (0.5f - head, shaft / 2), (-0.5f, shaft / 2))
            : Lines(shaft, [(-0.5f, 0), (0.5f, 0)], [(0.5f - head, -head), (0.5f, 0), (0.5f - head, head)]);
        // One that points up, or up and to the right, is a 1 or a 7 in some faces.
        return Turned(arrow, random.Pick([0, 45, 90, 135, 180, 225]) + random.Normal(5));
    }

    private static SKPath Triangle(Random random) =>
        Turned(Polygon((0, -0.5f), (0.45f, 0.4f), (-0.45f, 0.4f)), random.Between(0, 360));

    private static SKPath Dot(Random random) => Oval(SKRect.Create(random.Between(0.8f, 1), 1));

    private static SKPath Ring(Random random) => Lines(
        random.Between(0.05f, 0.25f),
        [[.. Enumerable.Range(0, 25).Select(step => (0.4f * MathF.Cos(step * MathF.Tau / 24), 0.4f * MathF.Sin(step * MathF.Tau / 24)))]]);

    private static SKPath Square(Random random) => random.Chance(0.5)
        ? Polygon((0, 0), (1, 0), (1, 1), (0, 1))
        : Lines(random.Between(0.05f, 0.2f), [(0, 0), (0.9f, 0), (0.9f, 0.9f), (0, 0.9f), (0, -0.05f)]);

    private static SKPath Cross(Random random) =>
        Turned(Lines(random.Between(0.06f, 0.25f), [(-0.5f, 0), (0.5f, 0)], [(0, -0.5f), (0, 0.5f)]), random.Pick([0, 45]));

    private static SKPath Tick(Random random) =>
        Lines(random.Between(0.08f, 0.16f), [(-0.45f, 0), (-0.15f, 0.35f), (0.5f, random.Between(-0.5f, -0.2f))]);

    private static SKPath Star(Random random)
    {
        var (points, inner) = (random.Next(4, 8), random.Between(0.2f, 0.35f));
        return Polygon([.. Enumerable.Range(0, 2 * points).Select(step =>
        {
            var (radius, angle) = (step % 2 == 0 ? 0.5f : inner, step * MathF.PI / points - MathF.PI / 2);
            return (radius * MathF.Cos(angle), radius * MathF.Sin(angle));
        })]);
    }

    /// <summary>What is left of a line, lying or aslant. One that stands is a 1.</summary>
    private static SKPath Bar(Random random) => random.Chance(0.5)
        ? Lines(random.Between(0.03f, 0.5f), [(-0.5f, 0), (0.5f, random.Normal(0.05f))])
        : Turned(Lines(random.Between(0.03f, 0.15f), [(-0.5f, 0), (0.5f, 0)]), random.Sign() * random.Between(15, 55));

    /// <summary>An upright line that is thinner than any 1, or two that meet at the upper right, thinner than any 7.</summary>
    private static SKPath Hairline(Random random) => random.Chance(0.5)
        ? Lines(random.Between(0.012f, 0.02f), [(0, -0.5f), (0, 0.5f)])
        : Lines(random.Between(0.012f, 0.02f), [(random.Between(0, 0.5f), 0), (1, 0), (1, random.Between(0.5f, 1))]);

    /// <summary>A corner of a frame, but for the one at the upper right, which is a 7 in some faces.</summary>
    private static SKPath Corner(Random random) => Turned(
        Lines(random.Between(0.03f, 0.15f), [(0, random.Between(0.5f, 1)), (0, 0), (random.Between(0.5f, 1), 0)]), 90 * random.Pick([0, 2, 3]));

    private static SKPath Junction(Random random)
    {
        var (thickness, at) = (random.Between(0.03f, 0.12f), random.Between(-0.3f, 0.3f));
        return Turned(Lines(thickness, [(-0.5f, 0), (0.5f, 0)], [(at, random.Pick([-0.5f, 0])), (at, 0.5f)]), 90 * random.Next(4));
    }

    private static SKPath Blot(Random random)
    {
        using var path = new SKPathBuilder();
        for (var left = random.Next(2, 7); left > 0; left--)
            path.AddOval(SKRect.Create(
                random.Between(-0.5f, 0.2f), random.Between(-0.5f, 0.2f), random.BetweenByRatio(0.1f, 0.5f), random.BetweenByRatio(0.1f, 0.5f)));
        return path.Detach();
    }

    private static SKPath Hatching(Random random)
    {
        var (step, slope) = (random.Between(0.12f, 0.3f), random.Pick([-1f, 0, 1]));
        using var hatching = Lines(
            step * random.Between(0.2f, 0.6f),
            [.. Enumerable.Range(-10, 21).Select(line => new[] { (-1, line * step - slope), (1f, line * step + slope) })]);
        using var cell = Polygon((-0.5f, -0.5f), (0.5f, -0.5f), (0.5f, 0.5f), (-0.5f, 0.5f));
        return hatching.Op(cell, SKPathOp.Intersect) ?? new SKPath(cell);
    }

    /// <summary>The arrow of a mouse.</summary>
    private static SKPath Pointer(Random random) => Turned(
        Polygon((0, 0), (0, 0.85f), (0.19f, 0.67f), (0.32f, 1), (0.46f, 0.94f), (0.33f, 0.62f), (0.6f, 0.6f)), random.Normal(4));
}
