using Companion.Sight.Samples;
using Companion.Sight.Training.Network;

namespace Companion.Sight.Training.Onnx;

/// <summary>The network as a model, from ink to certainties.</summary>
internal static class DigitModel
{
    /// <summary>Writes it.</summary>
    /// <param name="network">The network, trained.</param>
    /// <param name="temperature">What the sums are divided by before they become certainties.</param>
    public static byte[] Write(DigitNetwork network, float temperature)
    {
        var graph = new OnnxGraph()
            .Constant("planes", [0, 1, GlyphImage.Side, GlyphImage.Side])
            .Constant("cooled", [1 / temperature], [1])
            .Node("Reshape", ["ink", "planes"], "plane0");
        for (var layer = 0; layer < DigitNetwork.Layers.Length; layer++)
        {
            var (kernel, from, to) = DigitNetwork.Layers[layer];
            var (weights, biases) = network.Folded(layer);
            var room = kernel / 2;
            graph.Constant($"convolution{layer}.weights", weights, to, from, kernel, kernel)
                .Constant($"convolution{layer}.biases", biases, to)
                .Node(
                    "Conv", [$"plane{layer}", $"convolution{layer}.weights", $"convolution{layer}.biases"], $"convolution{layer}.sums",
                    ("kernel_shape", [kernel, kernel], true), ("strides", [2, 2], true), ("pads", [room, room, room, room], true))
                .Node("Relu", [$"convolution{layer}.sums"], $"plane{layer + 1}");
        }

        var (hidden, output) = (DigitNetwork.Full(network.First), DigitNetwork.Full(network.Last));
        return graph.Node("Flatten", [$"plane{DigitNetwork.Layers.Length}"], "flat", ("axis", [1], false))
            .Constant("hidden.weights", hidden.Weights, DigitNetwork.Flat, DigitNetwork.Hidden)
            .Constant("hidden.biases", hidden.Biases, DigitNetwork.Hidden)
            .Node("Gemm", ["flat", "hidden.weights", "hidden.biases"], "hidden.sums")
            .Node("Relu", ["hidden.sums"], "hidden.results")
            .Constant("output.weights", output.Weights, DigitNetwork.Hidden, GlyphSample.Classes)
            .Constant("output.biases", output.Biases, GlyphSample.Classes)
            .Node("Gemm", ["hidden.results", "output.weights", "output.biases"], "output.sums")
            .Node("Mul", ["output.sums", "cooled"], "output.cooled")
            .Node("Softmax", ["output.cooled"], "certainty", ("axis", [1], false))
            .ToModel("digits", ("ink", [GlyphImage.Side, GlyphImage.Side]), ("certainty", [GlyphSample.Classes]));
    }
}
