using Companion.Sight.Samples;

namespace Companion.Sight.Training.Network;

/// <summary>Finds by what the sums are to be divided so that certainties are as often right as they say (Guo and others, 2017).</summary>
internal static class Calibration
{
    /// <summary>The temperature at which the samples are the least surprising.</summary>
    /// <param name="weights">All weights, network by network.</param>
    /// <param name="samples">Samples that the network was not trained with.</param>
    public static float Temperature(float[][] weights, SampleSet samples)
    {
        var sums = Sums(weights, samples);
        var (low, high) = (0.3, 5.0);
        while (high - low > 0.001)
        {
            var third = (high - low) / 3;
            (low, high) = Surprise(sums, samples, low + third) < Surprise(sums, samples, high - third) ? (low, high - third) : (low + third, high);
        }

        return (float)(low + high) / 2;
    }

    /// <summary>The part of the samples that are read rightly.</summary>
    public static double Right(float[][] weights, SampleSet samples) =>
        Sums(weights, samples).Where((sums, index) => sums.IndexOf(sums.Max()) == samples.Kinds[index]).Count() / (double)samples.Count;

    // The mean of what the networks say, before it becomes certainties.
    private static List<float>[] Sums(float[][] weights, SampleSet samples)
    {
        var pass = new Pass();
        var sums = new List<float>[samples.Count];
        foreach (var network in weights)
        {
            var parameters = new Buffer(network.Length);
            network.CopyTo(parameters.Span);
            for (var index = 0; index < samples.Count; index++)
            {
                pass.Forward(parameters, samples[index]);
                var before = sums[index];
                sums[index] = [.. pass.Output.Span[..GlyphSample.Classes].ToArray().Select((sum, kind) => sum / weights.Length + (before?[kind] ?? 0))];
            }
        }

        return sums;
    }

    private static double Surprise(List<float>[] sums, SampleSet samples, double temperature) => sums
        .Select((sum, index) => Math.Log(sum.Sum(value => Math.Exp((value - sum[samples.Kinds[index]]) / temperature))))
        .Average();
}
