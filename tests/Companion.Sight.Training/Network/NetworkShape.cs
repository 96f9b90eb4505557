using Companion.Sight.Reading;
using Companion.Sight.Samples;

namespace Companion.Sight.Training.Network;

/// <summary>How large a network is.</summary>
/// <param name="Name">What it is called.</param>
/// <param name="Side">Columns and rows of its images.</param>
/// <param name="Layers">The convolutions: how wide, and how many channels go in and come out. Each takes every other place.</param>
/// <param name="Hidden">Numbers between the two full layers.</param>
/// <param name="Sums">Numbers that come out.</param>
internal sealed record NetworkShape(string Name, int Side, (int Kernel, int From, int To)[] Layers, int Hidden, int Sums)
{
    /// <summary>The network that reads glyphs: a sum for each class.</summary>
    public static NetworkShape Digits { get; } = new("digits", GlyphImage.Side, [(5, 1, 32), (3, 32, 64), (3, 64, 96)], 128, GlyphSample.Classes);

    /// <summary>The network that reads signs among what stands around them: a sum for each class, one for a line through it, and one for what covers it.</summary>
    public static NetworkShape Signs { get; } =
        new("signs", SignImage.Side, [(5, SignImage.Planes, 32), (3, 32, 48), (3, 48, 80)], 96, GlyphSample.Classes + 2);

    /// <summary>Numbers that go into the first full layer: what the halvings of the image leave.</summary>
    public int Flat => Layers[^1].To * (Side >> Layers.Length) * (Side >> Layers.Length);
}
