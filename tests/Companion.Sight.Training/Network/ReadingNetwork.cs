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
        foreach (var layer in shape.Layers)
        {
            Convolutions.Add(Conv2d(layer.From, layer.To, layer.Kernel, stride: layer.Stride, padding: layer.Room, dilation: layer.Dilation, bias: false));
            Norms.Add(BatchNorm2d(layer.To));
        }

        Module<Tensor, Tensor>[] ends;
        if (shape.Hidden is { } hidden)
            ends = [nn.Flatten(), First = Linear(shape.Flat, hidden), ReLU(), Last = Linear(hidden, shape.Sums)];
        else
            ends = [AtPlaces = Conv2d(shape.Layers[^1].To, shape.Sums, 1)];
        _all = Sequential(
        [
            .. Enumerable.Range(0, shape.Layers.Length).SelectMany(layer => new Module<Tensor, Tensor>[] { Convolutions[layer], Norms[layer], ReLU() }),
            .. ends,
        ]);
        RegisterComponents();
    }

    /// <summary>How large it is.</summary>
    public NetworkShape Shape { get; }

    /// <summary>The convolutions, without biases: the norms have them.</summary>
    public List<Conv2d> Convolutions { get; } = [];

    /// <summary>What brings each channel to a common scale after each convolution (Ioffe and Szegedy, 2015).</summary>
    public List<BatchNorm2d> Norms { get; } = [];

    /// <summary>The first full layer; null where there is none.</summary>
    public Linear? First { get; }

    /// <summary>The last full layer; null where there is none.</summary>
    public Linear? Last { get; }

    /// <summary>What makes the sums of each place; null where there are full layers.</summary>
    public Conv2d? AtPlaces { get; }

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

    /// <summary>What makes the sums of each place.</summary>
    /// <returns>The weights, outputs by inputs, and the biases.</returns>
    public static (float[] Weights, float[] Biases) Full(Conv2d layer)
    {
        using var scope = NewDisposeScope();
        using var still = no_grad();
        return (Numbers(layer.weight), Numbers(layer.bias!));
    }

    private static float[] Numbers(Tensor tensor) => tensor.contiguous().data<float>().ToArray();
}
