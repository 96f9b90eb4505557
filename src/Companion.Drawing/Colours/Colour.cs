using System.Globalization;
using System.Text.Json.Serialization;

namespace Companion.Drawing.Colours;

/// <summary>An opaque sRGB colour. The default value is black.</summary>
/// <param name="Red">Red, 0 to 255.</param>
/// <param name="Green">Green, 0 to 255.</param>
/// <param name="Blue">Blue, 0 to 255.</param>
[JsonConverter(typeof(ColourJson))]
public readonly record struct Colour(byte Red, byte Green, byte Blue)
{
    /// <summary>Relative luminance, 0 for black to 1 for white. Source: WCAG 2.2, definition of relative luminance.</summary>
    public double Luminance => 0.2126 * Linear(Red) + 0.7152 * Linear(Green) + 0.0722 * Linear(Blue);

    /// <summary>Contrast ratio, 1 for equal luminance to 21 for black and white. Source: WCAG 2.2, contrast ratio.</summary>
    public double ContrastTo(Colour other)
    {
        var (mine, its) = (Luminance, other.Luminance);
        return (Math.Max(mine, its) + 0.05) / (Math.Min(mine, its) + 0.05);
    }

    /// <summary>The intensity of one channel, 0 to 1, of a stored value: the sRGB curve undone.</summary>
    /// <param name="channel">The stored value, 0 to 255.</param>
    public static double Linear(byte channel)
    {
        // WCAG 2.2 has 0.04045 here since May 2021, as IEC 61966-2-1; no stored byte lies between it and the older 0.03928.
        var value = channel / 255.0;
        return value <= 0.04045 ? value / 12.92 : Math.Pow((value + 0.055) / 1.055, 2.4);
    }

    /// <summary>Reads <c>#0072B2</c>; lower case is taken too.</summary>
    /// <param name="text">What to read.</param>
    /// <param name="colour">The colour, or black where the text is none.</param>
    /// <returns>Whether the text is a colour and nothing else.</returns>
    public static bool TryParse(string? text, out Colour colour)
    {
        colour = default;
        if (text is not { Length: 7 } || text[0] != '#'
            || !uint.TryParse(text.AsSpan(1), NumberStyles.AllowHexSpecifier, CultureInfo.InvariantCulture, out var rgb))
            return false;
        colour = new((byte)(rgb >> 16), (byte)(rgb >> 8), (byte)rgb);
        return true;
    }

    /// <summary>Reads <c>#0072B2</c>.</summary>
    /// <param name="text">What to read.</param>
    /// <exception cref="FormatException">The text is not a colour.</exception>
    public static Colour Parse(string text) =>
        TryParse(text, out var colour) ? colour : throw new FormatException($"'{text}' is not a colour such as #0072B2.");

    /// <summary>The colour as <c>#0072B2</c>.</summary>
    public override string ToString() => $"#{Red:X2}{Green:X2}{Blue:X2}";
}
