using Companion.Sight.Samples;
using Companion.Sight.Training.Network;

namespace Companion.Sight.Training.Onnx;

/// <summary>Networks as models.</summary>
internal static class ReadingModel
{
    private delegate OnnxGraph Numbers(OnnxGraph graph, string name, float[] values, params long[] shape);

    /// <summary>Writes the network that reads glyphs, from <c>ink</c> to <c>certainty</c> of each class.</summary>
    /// <param name="network">The network, trained.</param>
    /// <param name="temperature">What the sums are divided by before they become certainties.</param>
    public static byte[] Digits(ReadingNetwork network, float temperature) =>
        Sums(network, (graph, name, values, shape) => graph.Constant(name, values, shape))
            .Constant("cooled", [1 / temperature], [1])
            .Node("Mul", ["output.sums", "cooled"], "output.cooled")
            .Node("Softmax", ["output.cooled"], "certainty", ("axis", [1], false))
            .ToModel(network.Shape.Name, ("ink", [GlyphImage.Side, GlyphImage.Side]), ("certainty", [GlyphSample.Classes]));

    /// <summary>
    /// Writes the network that reads signs, from <c>ink</c> to <c>certainty</c> of each class, of a line through it and of what covers it.
    /// Its weights are stored in half the bytes.
    /// </summary>
    /// <param name="network">The network, trained.</param>
    /// <param name="temperature">What the sums of the classes are divided by before they become certainties.</param>
    /// <param name="lines">The same for the sum of a line.</param>
    /// <param name="covers">The same for the sum of what covers it.</param>
    public static byte[] Signs(ReadingNetwork network, float temperature, float lines, float covers) =>
        Sums(network, (graph, name, values, shape) => graph.Half(name, values, shape))
            .Constant("cooled", [.. Enumerable.Repeat(1 / temperature, GlyphSample.Classes), 1 / lines, 1 / covers], [network.Shape.Sums])
            .Constant("from", 0).Constant("others.from", GlyphSample.Classes).Constant("to", network.Shape.Sums).Constant("axis", 1)
            .Node("Mul", ["output.sums", "cooled"], "output.cooled")
            .Node("Slice", ["output.cooled", "from", "others.from", "axis"], "classes.sums")
            .Node("Slice", ["output.cooled", "others.from", "to", "axis"], "others.sums")
            .Node("Softmax", ["classes.sums"], "classes", ("axis", [1], false))
            .Node("Sigmoid", ["others.sums"], "others")
            .Node("Concat", ["classes", "others"], "certainty", ("axis", [1], false))
            .ToModel(network.Shape.Name, ("ink", [network.Shape.Layers[0].From, network.Shape.Side, network.Shape.Side]), ("certainty", [network.Shape.Sums]));

    private static OnnxGraph Sums(ReadingNetwork network, Numbers add)
    {
        var shape = network.Shape;
        var graph = new OnnxGraph()
            .Constant("planes", [0, shape.Layers[0].From, shape.Side, shape.Side])
            .Node("Reshape", ["ink", "planes"], "plane0");
        for (var layer = 0; layer < shape.Layers.Length; layer++)
        {
            var (kernel, from, to) = shape.Layers[layer];
            var (weights, biases) = network.Folded(layer);
            var room = kernel / 2;
            add(graph, $"convolution{layer}.weights", weights, to, from, kernel, kernel);
            add(graph, $"convolution{layer}.biases", biases, to)
                .Node(
                    "Conv", [$"plane{layer}", $"convolution{layer}.weights", $"convolution{layer}.biases"], $"convolution{layer}.sums",
                    ("kernel_shape", [kernel, kernel], true), ("strides", [2, 2], true), ("pads", [room, room, room, room], true))
                .Node("Relu", [$"convolution{layer}.sums"], $"plane{layer + 1}");
        }

        var (hidden, output) = (ReadingNetwork.Full(network.First), ReadingNetwork.Full(network.Last));
        graph.Node("Flatten", [$"plane{shape.Layers.Length}"], "flat", ("axis", [1], false));
        add(graph, "hidden.weights", hidden.Weights, shape.Flat, shape.Hidden);
        add(graph, "hidden.biases", hidden.Biases, shape.Hidden)
            .Node("Gemm", ["flat", "hidden.weights", "hidden.biases"], "hidden.sums")
            .Node("Relu", ["hidden.sums"], "hidden.results");
        add(graph, "output.weights", output.Weights, shape.Hidden, shape.Sums);
        return add(graph, "output.biases", output.Biases, shape.Sums).Node("Gemm", ["hidden.results", "output.weights", "output.biases"], "output.sums");
    }
}
