using static TorchSharp.torch;

namespace Companion.Sight.Training.Network;

/// <summary>Trains a network. The result depends on the seed and the samples alone, not on the number of threads.</summary>
internal sealed class Trainer : IDisposable
{
    private const int Batch = 256, Portions = 4, Warming = 300;
    private const double Rate = 0.003, Decay = 0.01, MostKept = 0.998;

    private readonly ITrainingSet _samples;
    private readonly int _threads;
    private readonly ReadingNetwork _network;

    // Each thread goes through its own portion of a batch, with its own copy of the network: then they wait for each other but once a step.
    private readonly ReadingNetwork[] _copies;

    private Trainer(ITrainingSet samples, int seed, int threads)
    {
        (_samples, _threads) = (samples, threads);
        set_num_threads(1);
        manual_seed(seed);
        _network = new(samples.Shape);
        _copies = [.. Enumerable.Range(0, Portions).Select(_ => new ReadingNetwork(samples.Shape))];
    }

    /// <summary>Trains for some rounds through the samples.</summary>
    /// <returns>The network with the mean of the weights over the last steps, which reads better than those of any one step.</returns>
    public static ReadingNetwork Train(ITrainingSet samples, int seed, int rounds, int threads, Action<int, double> afterRound)
    {
        using var trainer = new Trainer(samples, seed, threads);
        return trainer.Train(rounds, new Random(seed), afterRound);
    }

    /// <inheritdoc/>
    public void Dispose()
    {
        _network.Dispose();
        foreach (var copy in _copies)
            copy.Dispose();
    }

    private ReadingNetwork Train(int rounds, Random lot, Action<int, double> afterRound)
    {
        var averaged = new ReadingNetwork(_samples.Shape);
        var order = Enumerable.Range(0, _samples.Count).ToArray();
        var steps = _samples.Count / Batch;
        // Weights that decay on their own (Loshchilov and Hutter, 2017).
        using var optimizer = optim.AdamW(_network.parameters(), Rate, weight_decay: Decay);
        for (var round = 0; round < rounds; round++)
        {
            lot.Shuffle(order);
            var loss = 0.0;
            for (var step = 0; step < steps; step++)
            {
                using var scope = NewDisposeScope();
                var done = round * steps + step;
                foreach (var group in optimizer.ParamGroups)
                    group.LearningRate = RateAt(done, rounds * steps);
                loss += Gradients(order[(step * Batch)..((step + 1) * Batch)]);
                optimizer.step();
                Average(averaged, Math.Min(MostKept, done / (done + 10.0)));
            }

            afterRound(round, loss / steps);
        }

        averaged.eval();
        return averaged;
    }

    /// <summary>Rises at first, then falls along a cosine.</summary>
    private static double RateAt(int step, int steps) =>
        Rate * Math.Min(1, (step + 1.0) / Warming) * (0.01 + 0.99 * (1 + Math.Cos(Math.PI * step / steps)) / 2);

    /// <summary>Puts the gradients of a batch into the network.</summary>
    /// <returns>The mean loss.</returns>
    private double Gradients(int[] batch)
    {
        var losses = new double[Portions];
        Parallel.For(0, Portions, new() { MaxDegreeOfParallelism = _threads }, portion =>
        {
            using var scope = NewDisposeScope();
            var copy = _copies[portion];
            using (no_grad())
                foreach (var (own, now) in copy.parameters().Zip(_network.parameters()))
                    own.copy_(now);
            copy.zero_grad(set_to_none: false);
            var loss = _samples.Loss(copy, batch.AsSpan(portion * Batch / Portions, Batch / Portions));
            loss.backward();
            losses[portion] = loss.item<float>();
        });
        var gradients = _copies.Select(copy => copy.parameters().Select(part => part.grad!).ToArray()).ToArray();
        foreach (var (part, index) in _network.parameters().Select((part, index) => (part, index)))
            part.grad = stack(gradients.Select(all => all[index])).mean([0]);
        return losses.Average();
    }

    private void Average(ReadingNetwork averaged, double kept)
    {
        using var still = no_grad();
        foreach (var (mean, now) in averaged.parameters().Zip(_network.parameters()))
            mean.lerp_(now, 1 - kept);
        // What the norms saw of the channels.
        foreach (var copy in _copies)
            foreach (var (mean, now) in averaged.buffers().Zip(copy.buffers()).Where(pair => pair.First.is_floating_point()))
                mean.lerp_(now, (1 - kept) / Portions);
    }
}
