using SkiaSharp;

namespace Companion.Sight.Samples;

/// <summary>Draws single digits.</summary>
internal static class Digits
{
    /// <summary>A digit, in a face of its own or, for training, with a bent outline.</summary>
    public static Subject Pick(Random random, IReadOnlyList<FontFamily> families, float height, double warped)
    {
        var digit = random.Next(9);
        if (digit == 0 && random.Chance(0.05))
            return Stroke(random, height);
        var lettering = Lettering.Pick(random, families, height);
        return random.Chance(warped)
            ? lettering.Shape(digit, Bent(random, lettering.Outline(((char)('1' + digit)).ToString()), height))
            : lettering.Digit(digit) with { Neighbour = lettering.Digit(random.Next(9)) };
    }

    /// <summary>A 1 that is but an upright stroke, as some faces and many hands have it.</summary>
    private static Subject Stroke(Random random, float height)
    {
        using var path = new SKPathBuilder();
        var width = random.BetweenByRatio(0.09f, 0.26f) * height;
        var round = random.Chance(0.3) ? width / 2 : 0;
        path.AddRoundRect(new SKRoundRect(SKRect.Create(width, height), round, round));
        using var upright = path.Detach();
        var stroke = new SKPath();
        upright.Transform(SKMatrix.CreateSkew(random.Chance(0.3) ? -random.Between(0, 0.25f) : 0, 0), stroke);
        return Subject.Of(0, "", stroke);
    }

    /// <summary>The outline bent by slow waves, sheared and stretched, and made thicker or thinner: a face that nobody has cut yet.</summary>
    /// <param name="random">What is left to the lot.</param>
    /// <param name="outline">The outline of a digit that stands on the line of 0; it is disposed of.</param>
    /// <param name="height">About how high the digit is.</param>
    public static SKPath Bent(Random random, SKPath outline, float height)
    {
        var (strength, shear, stretch) = (random.Between(0, 0.045f) * height, random.Normal(0.08f), random.BetweenByRatio(0.8f, 1.25f));
        var (across, down) = (Wave(random, height), Wave(random, height));
        using var bent = new SKPathBuilder();
        using var points = outline.CreateRawIterator();
        var place = new SKPoint[4];
        for (var verb = points.Next(place); verb != SKPathVerb.Done; verb = points.Next(place))
            switch (verb)
            {
                case SKPathVerb.Move:
                    bent.MoveTo(Moved(place[0]));
                    break;
                case SKPathVerb.Line:
                    var middle = new SKPoint((place[0].X + place[1].X) / 2, (place[0].Y + place[1].Y) / 2);
                    bent.QuadTo(Moved(middle), Moved(place[1]));
                    break;
                case SKPathVerb.Quad:
                    bent.QuadTo(Moved(place[1]), Moved(place[2]));
                    break;
                case SKPathVerb.Conic:
                    bent.ConicTo(Moved(place[1]), Moved(place[2]), points.ConicWeight());
                    break;
                case SKPathVerb.Cubic:
                    bent.CubicTo(Moved(place[1]), Moved(place[2]), Moved(place[3]));
                    break;
                default:
                    bent.Close();
                    break;
            }

        outline.Dispose();
        return Weighted(random, bent.Detach(), height);

        SKPoint Moved(SKPoint point) => new(
            stretch * (point.X + shear * point.Y) + strength * across(point.X, point.Y), point.Y + strength * down(point.X, point.Y));
    }

    private static Func<float, float, float> Wave(Random random, float height)
    {
        var (x, y, phase) = (random.Normal(3.5f) / height, random.Normal(3.5f) / height, random.Between(0, MathF.Tau));
        return (right, below) => MathF.Sin(x * right + y * below + phase);
    }

    private static SKPath Weighted(Random random, SKPath outline, float height)
    {
        if (!random.Chance(0.4))
            return outline;
        // Thicker alone: a thin face made thinner loses its strokes.
        using var pen = new SKPaint
        {
            Style = SKPaintStyle.StrokeAndFill,
            StrokeWidth = random.Between(0.01f, 0.07f) * height,
            StrokeJoin = SKStrokeJoin.Round,
        };
        var thick = pen.GetFillPath(outline);
        outline.Dispose();
        return thick ?? throw new InvalidOperationException("There was no outline to thicken.");
    }
}
