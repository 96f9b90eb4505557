namespace Companion.Sight.Training.Network;

/// <summary>All weights of the network in one row, and where each layer has its own.</summary>
internal sealed class Parameters
{
    /// <summary>Channels after each convolution, and how many numbers are between the two full layers.</summary>
    public const int First = 16, Second = 32, Third = 48, Hidden = 64;

    /// <summary>Columns of the last layer: the classes, filled up to what a vector holds.</summary>
    public const int Outputs = 16;

    /// <summary>Numbers that go into the first full layer: what three halvings of 24 by 24 leave.</summary>
    public const int Flat = 3 * 3 * Third;

    /// <summary>The layers in their order: rows of the weights (inputs of one output), columns (outputs). The biases follow the weights.</summary>
    public static readonly (string Name, int Rows, int Columns)[] Layers =
    [
        ("first", 9, First), ("second", 9 * First, Second), ("third", 9 * Second, Third), ("hidden", Flat, Hidden), ("output", Hidden, Outputs),
    ];

    /// <summary>How many numbers all layers have.</summary>
    public static int Count { get; } = Layers.Sum(layer => (layer.Rows + 1) * layer.Columns);

    /// <summary>How many of them are used: all but those of the columns that fill up the last layer.</summary>
    public static int Used => Count - (Outputs - Samples.GlyphSample.Classes) * (Hidden + 1);

    /// <summary>Where a layer's weights begin.</summary>
    public static int WeightsOf(int layer) => Layers[..layer].Sum(before => (before.Rows + 1) * before.Columns);

    /// <summary>Where a layer's biases begin.</summary>
    public static int BiasesOf(int layer) => WeightsOf(layer) + Layers[layer].Rows * Layers[layer].Columns;

    /// <summary>Weights to begin with: normally distributed, so that each layer gives as much as it gets (He and others, 2015).</summary>
    public static float[] Initial(int seed)
    {
        var random = new Random(seed);
        var values = new float[Count];
        for (var layer = 0; layer < Layers.Length; layer++)
        {
            var (_, rows, columns) = Layers[layer];
            foreach (ref var value in values.AsSpan(WeightsOf(layer), rows * columns))
                value = (float)(Math.Sqrt(2.0 / rows) * Math.Sqrt(-2 * Math.Log(1 - random.NextDouble())) * Math.Cos(Math.Tau * random.NextDouble()));
        }

        return values;
    }
}
