using static TorchSharp.torch;

namespace Companion.Sight.Training.Network;

/// <summary>Finds by what the sums are to be divided so that certainties are as often right as they say (Guo and others, 2017).</summary>
/// <param name="sums">The network's sums for samples that it was not trained with.</param>
/// <param name="kinds">What they should be the greatest for.</param>
internal sealed class Calibration(IReadOnlyList<float[]> sums, IReadOnlyList<byte> kinds)
{
    /// <summary>
    /// By what the temperature is raised: boards have more that misleads than samples have, and what is wrong there and sure is entered.
    /// Chosen on boards: the least of a few factors that left none of those.
    /// </summary>
    public const float Caution = 1.4f;

    /// <summary>The temperature at which the samples are the least surprising, raised by <see cref="Caution"/>.</summary>
    public float Temperature()
    {
        var (low, high) = (0.3, 5.0);
        while (high - low > 0.001)
        {
            var third = (high - low) / 3;
            (low, high) = Surprise(low + third) < Surprise(high - third) ? (low, high - third) : (low + third, high);
        }

        return Caution * ((float)(low + high) / 2);
    }

    /// <summary>The part of the samples that are read rightly.</summary>
    public double Right => sums.Where((each, index) => Array.IndexOf(each, each.Max()) == kinds[index]).Count() / (double)kinds.Count;

    /// <summary>What a network says of samples.</summary>
    /// <param name="network">The network.</param>
    /// <param name="samples">The samples.</param>
    public static IReadOnlyList<float[]> Sums(ReadingNetwork network, ITrainingSet samples)
    {
        using var still = no_grad();
        return
        [
            .. Enumerable.Range(0, samples.Count).Chunk(SampleSet.Portion).SelectMany(portion =>
            {
                using var scope = NewDisposeScope();
                return network.forward(samples.Images(portion)).data<float>().ToArray().Chunk(network.Shape.Sums);
            }),
        ];
    }

    private double Surprise(double temperature) => sums
        .Select((each, index) => Math.Log(each.Sum(value => Math.Exp((value - each[kinds[index]]) / temperature))))
        .Average();
}
