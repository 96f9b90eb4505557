using Companion.Sight.Samples;
using Companion.Sight.Training.Boards;
using Companion.Sight.Training.Network;

namespace Companion.Sight.Training.Onnx;

/// <summary>Networks as models. Their weights are stored in half the bytes.</summary>
internal static class ReadingModel
{
    /// <summary>Writes the network that reads glyphs, from <c>ink</c> to <c>certainty</c> of each class.</summary>
    /// <param name="network">The network, trained.</param>
    /// <param name="temperature">What the sums are divided by before they become certainties.</param>
    public static byte[] Digits(ReadingNetwork network, float temperature) =>
        Sums(network)
            .Constant("cooled", [1 / temperature], [1])
            .Node("Mul", ["output.sums", "cooled"], "output.cooled")
            .Node("Softmax", ["output.cooled"], "certainty", ("axis", [1], false))
            .ToModel(network.Shape.Name, ("ink", [GlyphImage.Side, GlyphImage.Side]), ("certainty", [GlyphSample.Classes]));

    /// <summary>
    /// Writes the network that reads signs, from <c>ink</c> to <c>certainty</c> of each class, of a line through it and of what covers it.
    /// </summary>
    /// <param name="network">The network, trained.</param>
    /// <param name="temperature">What the sums of the classes are divided by before they become certainties.</param>
    /// <param name="lines">The same for the sum of a line.</param>
    /// <param name="covers">The same for the sum of what covers it.</param>
    public static byte[] Signs(ReadingNetwork network, float temperature, float lines, float covers) =>
        Sums(network)
            .Constant("cooled", [.. Enumerable.Repeat(1 / temperature, GlyphSample.Classes), 1 / lines, 1 / covers], [network.Shape.Sums])
            .Constant("from", 0).Constant("others.from", GlyphSample.Classes).Constant("to", network.Shape.Sums).Constant("axis", 1)
            .Node("Mul", ["output.sums", "cooled"], "output.cooled")
            .Node("Slice", ["output.cooled", "from", "others.from", "axis"], "classes.sums")
            .Node("Slice", ["output.cooled", "others.from", "to", "axis"], "others.sums")
            .Node("Softmax", ["classes.sums"], "classes", ("axis", [1], false))
            .Node("Sigmoid", ["others.sums"], "others")
            .Node("Concat", ["classes", "others"], "certainty", ("axis", [1], false))
            .ToModel(network.Shape.Name, ("ink", [network.Shape.Layers[0].From, network.Shape.Side, network.Shape.Side]), ("certainty", [network.Shape.Sums]));

    /// <summary>
    /// Writes the network that reads cells, from <c>ink</c> to <c>certainty</c> of each class and of a line, at each place.
    /// </summary>
    /// <param name="network">The network, trained.</param>
    public static byte[] Cells(ReadingNetwork network) =>
        Sums(network)
            .Constant("from", 0).Constant("line.from", CellSample.Classes).Constant("to", network.Shape.Sums).Constant("axis", 1)
            .Node("Slice", ["output.sums", "from", "line.from", "axis"], "classes.sums")
            .Node("Slice", ["output.sums", "line.from", "to", "axis"], "line.sums")
            .Node("Softmax", ["classes.sums"], "classes", ("axis", [1], false))
            .Node("Sigmoid", ["line.sums"], "line")
            .Node("Concat", ["classes", "line"], "certainty", ("axis", [1], false))
            .ToModel(
                network.Shape.Name, ("ink", [network.Shape.Layers[0].From, network.Shape.Side, network.Shape.Side]),
                ("certainty", [network.Shape.Sums, network.Shape.Places, network.Shape.Places]));

    private static OnnxGraph Sums(ReadingNetwork network)
    {
        var shape = network.Shape;
        var graph = new OnnxGraph()
            .Constant("planes", [0, shape.Layers[0].From, shape.Side, shape.Side])
            .Node("Reshape", ["ink", "planes"], "plane0");
        var isDilated = Array.Exists(shape.Layers, layer => layer.Dilation > 1);
        for (var index = 0; index < shape.Layers.Length; index++)
        {
            var layer = shape.Layers[index];
            var (weights, biases) = network.Folded(index);
            Convolution(graph, $"convolution{index}", $"plane{index}", layer, isDilated, weights, biases);
            graph.Node("Relu", [$"convolution{index}.sums"], $"plane{index + 1}");
        }

        var last = $"plane{shape.Layers.Length}";
        if (network.AtPlaces is { } places)
        {
            var (weights, biases) = ReadingNetwork.Full(places);
            return Convolution(graph, "output", last, new(1, shape.Layers[^1].To, shape.Sums, 1), isDilated, weights, biases);
        }

        graph.Node("Flatten", [last], "flat", ("axis", [1], false));
        Full(graph, "hidden", "flat", network.First!).Node("Relu", ["hidden.sums"], "hidden.results");
        return Full(graph, "output", "hidden.results", network.Last!);
    }

    private static OnnxGraph Convolution(OnnxGraph graph, string name, string from, Layer layer, bool isDilated, float[] weights, float[] biases)
    {
        var (kernel, stride, dilation, room) = (layer.Kernel, layer.Stride, layer.Dilation, layer.Room);
        return graph.Half($"{name}.weights", weights, layer.To, layer.From, kernel, kernel).Half($"{name}.biases", biases, layer.To).Node(
            "Conv", [from, $"{name}.weights", $"{name}.biases"], $"{name}.sums",
            [
                ("kernel_shape", [kernel, kernel], true), ("strides", [stride, stride], true),
                .. isDilated ? [("dilations", [dilation, dilation], true)] : Array.Empty<(string, long[], bool)>(),
                ("pads", [room, room, room, room], true),
            ]);
    }

    private static OnnxGraph Full(OnnxGraph graph, string name, string from, TorchSharp.Modules.Linear layer)
    {
        var (weights, biases) = ReadingNetwork.Full(layer);
        return graph.Half($"{name}.weights", weights, layer.in_features, layer.out_features).Half($"{name}.biases", biases, layer.out_features)
            .Node("Gemm", [from, $"{name}.weights", $"{name}.biases"], $"{name}.sums");
    }
}
