using Companion.Sight.Samples;
using TorchSharp.Modules;
using static TorchSharp.torch;
using static TorchSharp.torch.nn;

namespace Companion.Sight.Training.Network;

/// <summary>
/// The network in training: convolutions that halve the image, then two full layers, from glyphs by one channel by rows by columns to a
/// sum for each class.
/// </summary>
internal sealed class DigitNetwork : Module<Tensor, Tensor>
{
    /// <summary>Numbers between the two full layers.</summary>
    public const int Hidden = 128;

    /// <summary>The convolutions: how wide, and how many channels go in and come out. Each takes every other place.</summary>
    public static readonly (int Kernel, int From, int To)[] Layers = [(5, 1, 32), (3, 32, 64), (3, 64, 96)];

    /// <summary>Numbers that go into the first full layer: what three halvings of the image leave.</summary>
    public static readonly int Flat = Layers[^1].To * (GlyphImage.Side >> Layers.Length) * (GlyphImage.Side >> Layers.Length);

    private readonly Sequential _all;

    /// <summary>Weights drawn by lot.</summary>
    public DigitNetwork()
        : base("digits")
    {
        foreach (var (kernel, from, to) in Layers)
        {
            Convolutions.Add(Conv2d(from, to, kernel, stride: 2, padding: kernel / 2, bias: false));
            Norms.Add(BatchNorm2d(to));
        }

        First = Linear(Flat, Hidden);
        Last = Linear(Hidden, GlyphSample.Classes);
        _all = Sequential(
        [
            .. Enumerable.Range(0, Layers.Length).SelectMany(layer => new Module<Tensor, Tensor>[] { Convolutions[layer], Norms[layer], ReLU() }),
            nn.Flatten(), First, ReLU(), Last,
        ]);
        RegisterComponents();
    }

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
    /// <param name="layer">Its index in <see cref="Layers"/>.</param>
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
