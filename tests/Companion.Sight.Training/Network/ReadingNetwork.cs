using TorchSharp.Modules;
using static TorchSharp.torch;
using static TorchSharp.torch.nn;

namespace Companion.Sight.Training.Network;

/// <summary>
/// A network in training: convolutions that halve the image, then two full layers, from images by channels by rows by columns to sums.
/// </summary>
internal sealed class ReadingNetwork : Module<Tensor, Tensor>
{
    private readonly Sequential _all;

    /// <summary>Weights drawn by lot.</summary>
    /// <param name="shape">How large it is.</param>
    public ReadingNetwork(NetworkShape shape)
        : base(shape.Name)
    {
        Shape = shape;
        foreach (var (kernel, from, to) in shape.Layers)
        {
            Convolutions.Add(Conv2d(from, to, kernel, stride: 2, padding: kernel / 2, bias: false));
            Norms.Add(BatchNorm2d(to));
        }

        First = Linear(shape.Flat, shape.Hidden);
        Last = Linear(shape.Hidden, shape.Sums);
        _all = Sequential(
        [
            .. Enumerable.Range(0, shape.Layers.Length).SelectMany(layer => new Module<Tensor, Tensor>[] { Convolutions[layer], Norms[layer], ReLU() }),
            nn.Flatten(), First, ReLU(), Last,
        ]);
        RegisterComponents();
    }

    /// <summary>How large it is.</summary>
    public NetworkShape Shape { get; }

    /// <summary>The convolutions, without biases: the norms have them.</summary>
    public List<Conv2d> Convolutions { get; } = [];

    /// <summary>What brings each channel to a common scale after each convolution (Ioffe and Szegedy, 2015).</summary>
    public List<BatchNorm2d> Norms { get; } = [];

    /// <summary>The first full layer.</summary>
    public Linear First { get; }

    /// <summary>The last layer.</summary>
    public Linear Last { get; }

    /// <inheritdoc/>
    public override Tensor forward(Tensor input) => _all.forward(input);

    /// <summary>A convolution with its norm folded into it, as it is when the network reads.</summary>
    /// <param name="layer">Its index in <see cref="NetworkShape.Layers"/>.</param>
    /// <returns>The weights, outputs by inputs by rows by columns, and the biases.</returns>
    public (float[] Weights, float[] Biases) Folded(int layer)
    {
        using var scope = NewDisposeScope();
        using var still = no_grad();
        var norm = Norms[layer];
        var scale = norm.weight! / (norm.running_var! + norm.eps).sqrt();
        var weights = Convolutions[layer].weight * scale.reshape(-1, 1, 1, 1);
        return (Numbers(weights), Numbers(norm.bias! - norm.running_mean! * scale));
    }

    /// <summary>A full layer.</summary>
    /// <returns>The weights, inputs by outputs, and the biases.</returns>
    public static (float[] Weights, float[] Biases) Full(Linear layer)
    {
        using var scope = NewDisposeScope();
        using var still = no_grad();
        return (Numbers(layer.weight.t()), Numbers(layer.bias!));
    }

    private static float[] Numbers(Tensor tensor) => tensor.contiguous().data<float>().ToArray();
}
