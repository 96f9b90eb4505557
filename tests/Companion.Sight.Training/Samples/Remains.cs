using SkiaSharp;

namespace Companion.Sight.Samples;

/// <summary>Draws lines of the grid beside a glyph, and lines through it.</summary>
internal static class Remains
{
    /// <summary>A line beside the glyph or along its edge.</summary>
    public static void GridLine(Random random, SKCanvas canvas, SceneColours colours, SKRect box, SKSizeI size, float height)
    {
        var thickness = Math.Max(1, random.Between(0.03f, 0.14f) * height);
        // What finds glyphs takes lines out; what touches a glyph is sometimes left.
        var away = random.Between(random.Chance(0.08) ? -0.03f : 0.06f, 0.3f) * height + thickness / 2 + (random.Chance(0.8) ? 1 : 0);
        using var paint = Pen(thickness, random.Chance(0.5) ? colours.Ink : Between(random, colours));
        var (x, y) = random.Chance(0.5) ? (box.Left - away, box.Top - away) : (box.Right + away, box.Bottom + away);
        if (random.Chance(0.5))
            canvas.DrawLine(x, -1, x, size.Height + 1, paint);
        else
            canvas.DrawLine(-1, y, size.Width + 1, y, paint);
    }

    /// <summary>The digit beside this one in a row of marks, so near that it was cut off where the two meet.</summary>
    /// <returns>Where the glyph is: to where it was cut, now a little of its own being lost, now a little of the other's left.</returns>
    public static SKRect Neighbour(Random random, SKCanvas canvas, SceneColours colours, SKRect box, Subject neighbour, float height)
    {
        var gap = random.Between(-0.06f, 0.1f) * height;
        var cut = gap / 2 + random.Between(-0.06f, 0.06f) * height;
        var isRight = random.Chance(0.5);
        using var paint = new SKPaint { IsAntialias = true, Color = colours.Ink };
        canvas.Save();
        canvas.Translate(
            isRight ? box.Right + gap - neighbour.Bounds.Left : box.Left - gap - neighbour.Bounds.Right, box.MidY - neighbour.Bounds.MidY);
        neighbour.Paint(canvas, paint);
        canvas.Restore();
        return isRight ? new(box.Left, box.Top, box.Right + cut, box.Bottom) : new(box.Left - cut, box.Top, box.Right, box.Bottom);
    }

    /// <summary>A line through the glyph, or the gap that is left where one was taken out.</summary>
    /// <returns>Where the glyph is, with the line where nobody cut it off.</returns>
    public static SKRect Strike(Random random, SKCanvas canvas, SceneColours colours, SKRect box, float height)
    {
        var gap = random.Chance(0.35);
        var thickness = Math.Max(0.7f, random.Between(0.04f, 0.1f) * height);
        var beyond = random.Between(-0.05f, 0.28f) * height;
        var slope = random.Chance(0.5) ? random.Normal(0.05f) : random.Sign() * random.Between(0.3f, 1);
        var middle = box.MidY + random.Normal(0.06f) * box.Height;
        var rise = slope * box.Height / 2;
        using var paint = Pen(thickness, gap ? colours.Ground : random.Chance(0.6) ? colours.Ink : random.Near(colours.Ink, 120));
        var line = new SKRect(box.Left - beyond, middle - Math.Abs(rise), box.Right + beyond, middle + Math.Abs(rise));
        canvas.DrawLine(line.Left, middle - rise, line.Right, middle + rise, paint);
        line.Inflate(0, thickness / 2);
        return !gap && beyond > 0 && random.Chance(0.5) ? SKRect.Union(box, line) : box;
    }

    private static SKPaint Pen(float thickness, SKColor colour) =>
        new() { Style = SKPaintStyle.Stroke, StrokeWidth = thickness, Color = colour, IsAntialias = true };

    private static SKColor Between(Random random, SceneColours colours)
    {
        var part = random.Between(0.3f, 1);
        return new(
            Mixed(colours.Ground.Red, colours.Ink.Red),
            Mixed(colours.Ground.Green, colours.Ink.Green),
            Mixed(colours.Ground.Blue, colours.Ink.Blue));

        byte Mixed(byte ground, byte ink) => (byte)(ground + part * (ink - ground));
    }
}
