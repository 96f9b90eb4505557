using static TorchSharp.torch;

namespace Companion.Sight.Training.Network;

/// <summary>Finds by what the sums are to be divided so that certainties are as often right as they say (Guo and others, 2017).</summary>
/// <param name="network">The network.</param>
/// <param name="samples">Samples that it was not trained with.</param>
internal sealed class Calibration(DigitNetwork network, SampleSet samples)
{
    /// <summary>
    /// By what the temperature is raised: boards have more that misleads than samples have, and what is wrong there and sure is entered.
    /// Chosen on boards: the least of a few factors that left none of those.
    /// </summary>
    public const float Caution = 1.4f;

    private readonly float[][] _sums = Sums(network, samples);

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
    public double Right => _sums.Where((sums, index) => Array.IndexOf(sums, sums.Max()) == samples.Kinds[index]).Count() / (double)samples.Count;

    private static float[][] Sums(DigitNetwork network, SampleSet samples)
    {
        using var still = no_grad();
        return
        [
            .. Enumerable.Range(0, samples.Count).Chunk(SampleSet.Portion).SelectMany(portion =>
            {
                using var scope = NewDisposeScope();
                return network.forward(samples.Tensors(portion).Ink).data<float>().ToArray().Chunk(Samples.GlyphSample.Classes);
            }),
        ];
    }

    private double Surprise(double temperature) => _sums
        .Select((sums, index) => Math.Log(sums.Sum(value => Math.Exp((value - sums[samples.Kinds[index]]) / temperature))))
        .Average();
}
