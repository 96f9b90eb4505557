namespace Companion.Sight.Training.Network;

/// <summary>Steps down the gradients (Kingma and Ba, 2014), with weights that decay on their own (Loshchilov and Hutter, 2017).</summary>
internal sealed class Adam(Buffer parameters)
{
    private const float Momentum = 0.9f, Spread = 0.999f, Decay = 0.002f;

    private readonly float[] _mean = new float[parameters.Length], _square = new float[parameters.Length];
    private int _steps;

    /// <summary>The mean of the weights over the last steps, which reads better than those of any one step.</summary>
    public Buffer Averaged { get; } = new(parameters.Length);

    /// <summary>One step.</summary>
    /// <param name="gradients">The gradients, of the mean loss.</param>
    /// <param name="rate">How far to go.</param>
    public void Step(ReadOnlySpan<float> gradients, float rate)
    {
        _steps++;
        var (unbiased, unbiasedSquare) = (1 - MathF.Pow(Momentum, _steps), 1 - MathF.Pow(Spread, _steps));
        var kept = Math.Min(0.998f, _steps / (_steps + 10f));
        var weights = parameters.Span;
        var averaged = Averaged.Span;
        for (var index = 0; index < weights.Length; index++)
        {
            var gradient = gradients[index];
            _mean[index] += (1 - Momentum) * (gradient - _mean[index]);
            _square[index] += (1 - Spread) * (gradient * gradient - _square[index]);
            weights[index] -= rate * (_mean[index] / unbiased / (MathF.Sqrt(_square[index] / unbiasedSquare) + 1e-8f) + Decay * weights[index]);
            averaged[index] = kept * averaged[index] + (1 - kept) * weights[index];
        }
    }
}
