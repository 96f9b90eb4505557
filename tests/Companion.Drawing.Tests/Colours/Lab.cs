using Companion.Drawing.Colours;

namespace Companion.Drawing.Tests.Colours;

/// <summary>A colour in CIELAB, and how far two are apart.</summary>
internal readonly record struct Lab(double L, double A, double B)
{
    /// <summary>From sRGB under D65, by the matrix of IEC 61966-2-1 and the CIE's function with its exact fractions.</summary>
    internal static Lab Of(Colour colour)
    {
        var (r, g, b) = (Colour.Linear(colour.Red), Colour.Linear(colour.Green), Colour.Linear(colour.Blue));
        var x = F((0.4124 * r + 0.3576 * g + 0.1805 * b) / 0.9505);
        var y = F(0.2126 * r + 0.7152 * g + 0.0722 * b);
        var z = F((0.0193 * r + 0.1192 * g + 0.9505 * b) / 1.0890);
        return new(116 * y - 16, 500 * (x - y), 200 * (y - z));

        static double F(double t) => t > 216.0 / 24389 ? Math.Cbrt(t) : (24389.0 / 27 * t + 16) / 116;
    }

    /// <summary>
    /// CIEDE2000 with all weights 1. Source: Sharma, Wu, Dalal, "The CIEDE2000 Color-Difference Formula: Implementation Notes,
    /// Supplementary Test Data, and Mathematical Observations", Color Research and Application 30(1), 2005, equations 2 to 22.
    /// </summary>
    internal double DifferenceFrom(Lab other)
    {
        var meanC = (Chroma(A, B) + Chroma(other.A, other.B)) / 2;
        var g = 0.5 * (1 - Math.Sqrt(Seventh(meanC)));
        var (a1, a2) = ((1 + g) * A, (1 + g) * other.A);
        var (c1, c2) = (Chroma(a1, B), Chroma(a2, other.B));
        var (h1, h2) = (Hue(a1, B), Hue(a2, other.B));

        var turn = c1 * c2 == 0 ? 0 : h2 - h1 is var d && d > 180 ? d - 360 : d < -180 ? d + 360 : d;
        var (dL, dC, dH) = (other.L - L, c2 - c1, 2 * Math.Sqrt(c1 * c2) * Sin(turn / 2));

        var (l, c) = ((L + other.L) / 2, (c1 + c2) / 2);
        var h = c1 * c2 == 0 ? h1 + h2 : Math.Abs(h1 - h2) <= 180 ? (h1 + h2) / 2 : (h1 + h2 + (h1 + h2 < 360 ? 360 : -360)) / 2;
        var t = 1 - 0.17 * Cos(h - 30) + 0.24 * Cos(2 * h) + 0.32 * Cos(3 * h + 6) - 0.20 * Cos(4 * h - 63);
        var sL = 1 + 0.015 * (l - 50) * (l - 50) / Math.Sqrt(20 + (l - 50) * (l - 50));
        var (sC, sH) = (1 + 0.045 * c, 1 + 0.015 * c * t);
        var rT = -Sin(60 * Math.Exp(-(h - 275) * (h - 275) / 625)) * 2 * Math.Sqrt(Seventh(c));
        return Math.Sqrt(dL / sL * (dL / sL) + dC / sC * (dC / sC) + dH / sH * (dH / sH) + rT * (dC / sC) * (dH / sH));
    }

    private static double Chroma(double a, double b) => Math.Sqrt(a * a + b * b);

    private static double Hue(double a, double b) => a == 0 && b == 0 ? 0 : (Math.Atan2(b, a) * 180 / Math.PI + 360) % 360;

    private static double Seventh(double c) => Math.Pow(c, 7) / (Math.Pow(c, 7) + Math.Pow(25, 7));

    private static double Sin(double degrees) => Math.Sin(degrees * Math.PI / 180);

    private static double Cos(double degrees) => Math.Cos(degrees * Math.PI / 180);
}
