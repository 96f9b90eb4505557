using System.Globalization;

namespace Companion.Sight.Tests.Boards;

/// <summary>The colours of a made-up page, #rrggbb, each told apart from its ground as its use needs.</summary>
internal sealed record BoardColours(
    string Page, string Cell, string CellLine, string BlockLine, string Given, string Entered, string Mark, string Shade, string Selected, string[] Fills, string Shape)
{
    // Text that people put up with on screens; WCAG 2.2 asks for 4.5 (1.4.3) of ordinary and 3 of large text.
    private const double GivenContrast = 6, EnteredContrast = 4, MarkContrast = 3.5;

    public static BoardColours Of(Random random)
    {
        var kind = random.Next(10);
        var (low, high, saturation) = kind < 5 ? (0.93, 1.0, 0.3) : kind < 8 ? (0.04, 0.2, 0.3) : (0.25, 0.9, 0.6);
        var lightness = low + random.NextDouble() * (high - low);
        if (lightness is > 0.35 and < 0.7)
            lightness = 0.8;
        var isLight = lightness > 0.5;
        var hue = random.NextDouble();
        var cell = Hsl(hue, saturation * random.NextDouble(), lightness);
        var page = random.Next(2) == 0 ? cell : Hsl(hue, 0.2 * random.NextDouble(), Math.Clamp(lightness + 0.08 * (random.NextDouble() - 0.5), 0, 1));
        string Near(double distance) => Hsl(hue, 0.15, Math.Clamp(lightness + (isLight ? -distance : distance), 0, 1));
        var given = Contrasting(random, cell, GivenContrast, 0.15);
        var shade = Hsl(random.NextDouble(), 0.6, Math.Clamp(lightness + (isLight ? -0.08 : 0.1), 0, 1));
        var selected = Hsl(random.NextDouble(), 0.7, Math.Clamp(lightness + (isLight ? -0.12 : 0.14), 0, 1));
        var fills = Enumerable.Range(0, 4).Select(_ => Hsl(random.NextDouble(), 0.7, Math.Clamp(lightness + (isLight ? -0.1 : 0.1), 0, 1))).ToArray();
        string Readable(double contrast, double most) => Contrasting(random, cell, contrast, most, [shade, selected, .. fills]);
        return new(
            page, cell,
            CellLine: Near(0.06 + 0.5 * random.NextDouble()), BlockLine: Near(0.35 + 0.5 * random.NextDouble()),
            given, random.Next(5) == 0 ? given : Other(given, () => Readable(EnteredContrast, 0.9)), random.Next(3) == 0 ? given : Readable(MarkContrast, 0.6),
            shade, selected, fills, Near(0.1 + 0.12 * random.NextDouble()));
    }

    public static string Hsl(double hue, double saturation, double lightness)
    {
        var chroma = (1 - Math.Abs(2 * lightness - 1)) * saturation;
        int Channel(double offset)
        {
            var k = (offset + hue * 12) % 12;
            return (int)Math.Round(255 * Math.Clamp(lightness - chroma / 2 * Math.Max(-1, Math.Min(Math.Min(k - 3, 9 - k), 1)), 0, 1));
        }

        return $"#{Channel(0):x2}{Channel(8):x2}{Channel(4):x2}";
    }

    // Who colours entered digits wants them told apart at a glance.
    private static string Other(string given, Func<string> next)
    {
        for (var apart = 80; ; apart--)
        {
            var colour = next();
            if (Enumerable.Range(0, 3).Max(channel => Math.Abs(Channel(colour, channel) - Channel(given, channel))) >= apart)
                return colour;
        }
    }

    private static int Channel(string colour, int channel) => int.Parse(colour.AsSpan(1 + 2 * channel, 2), NumberStyles.HexNumber, CultureInfo.InvariantCulture);

    private static string Contrasting(Random random, string ground, double contrast, double saturation, params string[] others)
    {
        while (true)
        {
            var colour = Hsl(random.NextDouble(), saturation * random.NextDouble(), random.NextDouble());
            if (Contrast(colour, ground) >= contrast && others.All(other => Contrast(colour, other) >= contrast - 1))
                return colour;
            contrast -= 0.02;
        }
    }

    // WCAG 2.2, relative luminance and contrast ratio.
    private static double Contrast(string a, string b)
    {
        var (x, y) = (Luminance(a), Luminance(b));
        return (Math.Max(x, y) + 0.05) / (Math.Min(x, y) + 0.05);
    }

    private static double Luminance(string colour)
    {
        double Linear(int channel)
        {
            var value = Channel(colour, channel) / 255.0;
            return value <= 0.04045 ? value / 12.92 : Math.Pow((value + 0.055) / 1.055, 2.4);
        }

        return 0.2126 * Linear(0) + 0.7152 * Linear(1) + 0.0722 * Linear(2);
    }
}
