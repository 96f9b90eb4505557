using System.Numerics.Tensors;

namespace Companion.Sight.Training.Network;

/// <summary>Trains the network. The result depends on the seed and the samples alone, not on the number of threads.</summary>
internal static class Trainer
{
    private const int Batch = 128, Portions = 8, Warming = 300;
    private const float Rate = 0.0025f;

    /// <summary>Trains for some rounds through the samples.</summary>
    /// <returns>The weights, averaged over the last steps.</returns>
    public static float[] Train(SampleSet samples, int seed, int rounds, int threads, Action<int, double> afterRound)
    {
        var parameters = new Buffer(Parameters.Count);
        Parameters.Initial(seed).CopyTo(parameters.Span);
        var adam = new Adam(parameters);
        var passes = Enumerable.Range(0, Portions).Select(_ => new Pass()).ToArray();
        var order = Enumerable.Range(0, samples.Count).ToArray();
        var lot = new Random(seed);
        var losses = new double[Portions];
        var steps = samples.Count / Batch;
        for (var round = 0; round < rounds; round++)
        {
            lot.Shuffle(order);
            var loss = 0.0;
            for (var step = 0; step < steps; step++)
            {
                var first = step * Batch;
                var seeds = lot.Next();
                Parallel.For(0, Portions, new() { MaxDegreeOfParallelism = threads }, portion =>
                {
                    var leaveOut = new Random(unchecked(seeds + portion * (int)0x85EBCA6B));
                    passes[portion].Begin(parameters);
                    losses[portion] = 0;
                    for (var index = portion; index < Batch; index += Portions)
                    {
                        var sample = order[first + index];
                        losses[portion] += passes[portion].Learn(parameters, samples[sample], samples.Kinds[sample], leaveOut);
                    }
                });
                for (var portion = 1; portion < Portions; portion++)
                    TensorPrimitives.Add(passes[0].Gradients.Span, passes[portion].Gradients.Span, passes[0].Gradients.Span);
                TensorPrimitives.Multiply(passes[0].Gradients.Span, 1f / Batch, passes[0].Gradients.Span);
                adam.Step(passes[0].Gradients.Span, RateAt(round * steps + step, rounds * steps));
                loss += losses.Sum() / Batch;
            }

            afterRound(round, loss / steps);
        }

        return adam.Averaged.Span.ToArray();
    }

    /// <summary>Rises at first, then falls along a cosine.</summary>
    private static float RateAt(int step, int steps) =>
        Rate * Math.Min(1, (step + 1f) / Warming) * (0.01f + 0.99f * (1 + MathF.Cos(MathF.PI * step / steps)) / 2);
}
