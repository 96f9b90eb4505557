using SkiaSharp;

namespace Companion.Sight.Samples;

/// <summary>Draws text as browsers do, in a face that was picked by lot.</summary>
internal sealed class Lettering
{
    private const float Hairline = 20;

    // Most systems hint slightly or not at all.
    private static readonly SKFontHinting[] Hintings =
        [SKFontHinting.None, SKFontHinting.None, SKFontHinting.Slight, SKFontHinting.Slight, SKFontHinting.Normal, SKFontHinting.Full];

    private readonly SKFont _font;
    private readonly string _family;

    private Lettering(SKFont font, string family) => (_font, _family) = (font, family);

    /// <summary>A face at a size.</summary>
    /// <param name="random">What is left to the lot.</param>
    /// <param name="families">The families to choose from.</param>
    /// <param name="height">How high the 8 is, in pixels.</param>
    public static Lettering Pick(Random random, IReadOnlyList<FontFamily> families, float height)
    {
        var family = random.Pick(families);
        var face = random.Pick(family.Faces);
        // Nobody sets small digits in hairlines: less than a third of a pixel of ink is no line any more.
        while (height < Hairline && IsThin(face) && !family.Faces.All(IsThin))
            face = random.Pick(family.Faces);
        var font = new SKFont(face, 100)
        {
            Subpixel = random.Chance(0.7),
            Edging = random.Chance(0.12) ? SKFontEdging.SubpixelAntialias : SKFontEdging.Antialias,
            Hinting = random.Pick(Hintings),
        };
        using (var eight = font.GetTextPath("8", SKPoint.Empty))
            font.Size = 100 * height / Math.Max(1, eight.TightBounds.Height);
        // What browsers make of a weight or a slope that a family lacks, and a little of wide and narrow.
        if (random.Chance(0.06))
            font.Embolden = true;
        if (random.Chance(0.1))
            font.SkewX = -random.Between(0.1f, 0.26f);
        if (random.Chance(0.2))
            font.ScaleX = random.Between(0.85f, 1.15f);
        return new(font, family.Name);
    }

    private static bool IsThin(SKTypeface face) => face.FontWeight < (int)SKFontStyleWeight.Light;

    /// <summary>Whether the face has all of a text.</summary>
    public bool Has(string text) => _font.ContainsGlyphs(text);

    /// <summary>The outline of a text.</summary>
    public SKPath Outline(string text) => _font.GetTextPath(text, SKPoint.Empty);

    /// <summary>A text, drawn with hinting.</summary>
    /// <param name="kind">Its class.</param>
    /// <param name="text">The text.</param>
    public Subject Text(int kind, string text)
    {
        using var outline = Outline(text);
        return new(kind, _family, outline.TightBounds, (canvas, paint) => canvas.DrawText(text, 0, 0, SKTextAlign.Left, _font, paint));
    }

    /// <summary>One of the digits.</summary>
    /// <param name="kind">Its class.</param>
    public Subject Digit(int kind) => Text(kind, ((char)('1' + kind)).ToString());

    /// <summary>An outline, without hinting.</summary>
    /// <param name="kind">Its class.</param>
    /// <param name="outline">The outline.</param>
    public Subject Shape(int kind, SKPath outline) => Subject.Of(kind, _family, outline);
}
