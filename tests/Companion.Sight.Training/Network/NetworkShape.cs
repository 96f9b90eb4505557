using Companion.Sight.Reading;
using Companion.Sight.Samples;
using Companion.Sight.Training.Boards;

namespace Companion.Sight.Training.Network;

/// <summary>A convolution.</summary>
/// <param name="Kernel">Columns and rows of what it looks at.</param>
/// <param name="From">The channels that go in.</param>
/// <param name="To">The channels that come out.</param>
/// <param name="Stride">Of how many places along an axis it takes one.</param>
/// <param name="Dilation">How far apart the places are that it looks at.</param>
internal sealed record Layer(int Kernel, int From, int To, int Stride = 2, int Dilation = 1)
{
    /// <summary>How many places beyond each edge it looks at, which are 0.</summary>
    public int Room => Dilation * (Kernel / 2);
}

/// <summary>How large a network is.</summary>
/// <param name="Name">What it is called.</param>
/// <param name="Side">Columns and rows of its images.</param>
/// <param name="Layers">The convolutions.</param>
/// <param name="Hidden">Numbers between the two full layers; null where there are none, and each place that the convolutions leave has sums of its own.</param>
/// <param name="Sums">Numbers that come out.</param>
internal sealed record NetworkShape(string Name, int Side, Layer[] Layers, int? Hidden, int Sums)
{
    /// <summary>The network that reads glyphs: a sum for each class.</summary>
    public static NetworkShape Digits { get; } = new("digits", GlyphImage.Side, [new(5, 1, 32), new(3, 32, 64), new(3, 64, 96)], 128, GlyphSample.Classes);

    /// <summary>The network that reads signs among what stands around them: a sum for each class, one for a line through it, and one for what covers it.</summary>
    public static NetworkShape Signs { get; } =
        new("signs", SignImage.Side, [new(5, SignImage.Planes, 32), new(3, 32, 48), new(3, 48, 80)], 96, GlyphSample.Classes + 2);

    /// <summary>The network that reads whole cells: at each place a sum for nothing, for each mark and each big digit, and one for a line through it.</summary>
    public static NetworkShape Cells { get; } = new(
        "cells", CellImage.Side,
        [new(5, CellImage.Planes, 16), new(3, 16, 32), new(3, 32, 48, 1), new(3, 48, 56, 1, 2), new(3, 56, 64, 1, 3)], null, CellSample.Classes + 1);

    /// <summary>Numbers that go into the first full layer: what the convolutions leave of the image.</summary>
    public int Flat => Layers[^1].To * Places * Places;

    /// <summary>Columns and rows of what the convolutions leave of the image.</summary>
    public int Places => Side / Layers.Aggregate(1, (all, layer) => all * layer.Stride);
}
