using SkiaSharp;

namespace Companion.Sight.Samples;

/// <summary>Draws what is written but is no digit: letters, signs, the nought, two digits in one, parts of digits.</summary>
internal static class Signs
{
    // Left out on purpose: what is a digit in some face, when it is bold and small or has a line through it (I l i j t f T X x | / ! ( ) for 1;
    // Z z R P for 2; { } for 3; A y Y u d for 4; S s $ for 5; G b for 6; ? ] r for 7; B a e & @ for 8; g q , for 9).
    private const string Letters = "CEFHKMNUVWchkmnpvw";
    private const string Marks = ".-=*#%+<>^~\"";

    // Parts that cannot be taken for a whole digit, as they are left when a crop goes wrong.
    private static readonly (string Digit, float Left, float Top, float Right, float Bottom)[] Parts =
    [
        ("2", 0, 0.5f, 1, 1), ("3", 0, 0.55f, 1, 1), ("5", 0, 0.5f, 1, 1), ("8", 0, 0.55f, 1, 1), ("6", 0, 0.5f, 1, 1),
        ("8", 0, 0, 1, 0.45f), ("9", 0, 0, 1, 0.5f), ("0", 0, 0, 1, 0.5f), ("0", 0, 0.5f, 1, 1),
        ("2", 0, 0.75f, 1, 1), ("5", 0, 0, 1, 0.3f), ("3", 0, 0, 1, 0.3f), ("4", 0, 0.5f, 0.7f, 0.8f),
    ];

    /// <summary>A letter or another sign.</summary>
    public static Subject Letter(Random random, IReadOnlyList<FontFamily> families, float height)
    {
        var text = random.Pick(random.Chance(0.7) ? Letters.ToCharArray() : Marks.ToCharArray()).ToString();
        while (true)
        {
            var lettering = Lettering.Pick(random, families, height);
            if (lettering.Has(text) && lettering.Text(GlyphSample.NoDigit, text) is { Bounds: { Width: > 0, Height: > 0 } } subject)
                return subject with { MayBeStruck = false };
        }
    }

    /// <summary>A nought, where nothing stands in it: with a dot or a bar it is close to an 8.</summary>
    public static Subject Nought(Random random, IReadOnlyList<FontFamily> families, float height)
    {
        while (true)
        {
            var lettering = Lettering.Pick(random, families, height);
            using var outline = lettering.Outline("0");
            if (!outline.Contains(outline.TightBounds.MidX, outline.TightBounds.MidY))
                return lettering.Text(GlyphSample.NoDigit, "0") with { MayBeStruck = false };
        }
    }

    /// <summary>Two digits that were taken for one.</summary>
    public static Subject Pair(Random random, IReadOnlyList<FontFamily> families, float height)
    {
        var lettering = Lettering.Pick(random, families, height);
        var first = lettering.Text(GlyphSample.NoDigit, random.Next(1, 10).ToString());
        var second = lettering.Text(GlyphSample.NoDigit, random.Next(1, 10).ToString());
        var shift = first.Bounds.Right - second.Bounds.Left + random.Between(-0.05f, 0.15f) * height;
        var moved = second.Bounds;
        moved.Offset(shift, 0);
        return new(GlyphSample.NoDigit, first.Family, SKRect.Union(first.Bounds, moved), (canvas, paint) =>
        {
            first.Paint(canvas, paint);
            canvas.Save();
            canvas.Translate(shift, 0);
            second.Paint(canvas, paint);
            canvas.Restore();
        });
    }

    /// <summary>A part of a digit.</summary>
    public static Subject Part(Random random, IReadOnlyList<FontFamily> families, float height)
    {
        var (digit, left, top, right, bottom) = random.Pick(Parts);
        var whole = Lettering.Pick(random, families, height).Text(GlyphSample.NoDigit, digit);
        var part = new SKRect(
            whole.Bounds.Left + left * whole.Bounds.Width, whole.Bounds.Top + top * whole.Bounds.Height,
            whole.Bounds.Left + right * whole.Bounds.Width, whole.Bounds.Top + bottom * whole.Bounds.Height);
        return new(GlyphSample.NoDigit, whole.Family, part, (canvas, paint) =>
        {
            canvas.Save();
            canvas.ClipRect(part, SKClipOperation.Intersect, antialias: true);
            whole.Paint(canvas, paint);
            canvas.Restore();
        }, MayBeStruck: false);
    }
}
