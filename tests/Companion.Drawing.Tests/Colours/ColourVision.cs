using Companion.Drawing.Colours;

namespace Companion.Drawing.Tests.Colours;

/// <summary>
/// How colours look to people who lack one kind of cone. Source: Machado, Oliveira, Fernandes, "A Physiologically-based Model for
/// Simulation of Color Vision Deficiency", IEEE TVCG 15(6), 2009: matrices of severity 1, on linear sRGB.
/// </summary>
internal static class ColourVision
{
    internal static IReadOnlyDictionary<string, double[]> Matrices { get; } = new Dictionary<string, double[]>
    {
        ["all cones"] = [1, 0, 0, 0, 1, 0, 0, 0, 1],
        ["protanopia"] = [.152286, 1.052583, -.204868, .114503, .786281, .099216, -.003882, -.048116, 1.051998],
        ["deuteranopia"] = [.367322, .860646, -.227968, .280085, .672501, .047413, -.011820, .042940, .968881],
        ["tritanopia"] = [1.255528, -.076749, -.178779, -.078411, .930809, .147602, .004733, .691367, .303900],
    };

    internal static Colour Seen(Colour colour, string vision)
    {
        var m = Matrices[vision];
        var (r, g, b) = (Colour.Linear(colour.Red), Colour.Linear(colour.Green), Colour.Linear(colour.Blue));
        return new(
            Stored(m[0] * r + m[1] * g + m[2] * b),
            Stored(m[3] * r + m[4] * g + m[5] * b),
            Stored(m[6] * r + m[7] * g + m[8] * b));
    }

    // The sRGB curve, IEC 61966-2-1.
    private static byte Stored(double linear)
    {
        var value = Math.Clamp(linear, 0, 1);
        return (byte)Math.Round(255 * (value <= 0.0031308 ? value * 12.92 : 1.055 * Math.Pow(value, 1 / 2.4) - 0.055));
    }
}
