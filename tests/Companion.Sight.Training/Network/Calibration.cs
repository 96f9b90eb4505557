using Companion.Sight.Samples;

namespace Companion.Sight.Training.Network;

/// <summary>Finds by what the sums are to be divided so that certainties are as often right as they say (Guo and others, 2017).</summary>
internal static class Calibration
{
    /// <summary>The temperature at which the samples are the least surprising.</summary>
    /// <param name="weights">All weights.</param>
    /// <param name="samples">Samples that the network was not trained with.</param>
    public static float Temperature(float[] weights, SampleSet samples)
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
    public static double Right(float[] weights, SampleSet samples) =>
        Sums(weights, samples).Where((sums, index) => sums.IndexOf(sums.Max()) == samples.Kinds[index]).Count() / (double)samples.Count;

    private static List<float>[] Sums(float[] weights, SampleSet samples)
    {
        var parameters = new Buffer(weights.Length);
        weights.CopyTo(parameters.Span);
        var pass = new Pass();
        return [.. Enumerable.Range(0, samples.Count).Select(index =>
        {
            pass.Forward(parameters, samples[index]);
            return pass.Output.Span[..GlyphSample.Classes].ToArray().ToList();
        })];
    }

    private static double Surprise(List<float>[] sums, SampleSet samples, double temperature) => sums
        .Select((sum, index) => Math.Log(sum.Sum(value => Math.Exp((value - sum[samples.Kinds[index]]) / temperature))))
        .Average();
}
