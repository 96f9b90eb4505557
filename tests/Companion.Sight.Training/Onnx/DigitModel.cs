using Companion.Sight.Samples;
using Companion.Sight.Training.Network;

namespace Companion.Sight.Training.Onnx;

/// <summary>The networks as one model, from ink to certainties.</summary>
internal static class DigitModel
{
    /// <summary>Writes it.</summary>
    /// <param name="networks">All weights, network by network: the mean of their sums counts.</param>
    /// <param name="temperature">What the sums are divided by before they become certainties.</param>
    public static byte[] Write(float[][] networks, float temperature)
    {
        var graph = new OnnxGraph()
            .Constant("planes", [0, 1, GlyphImage.Side, GlyphImage.Side])
            .Constant("cooled", [1 / (temperature * networks.Length)], [1])
            .Node("Reshape", ["ink", "planes"], "plane");
        for (var network = 0; network < networks.Length; network++)
            Add(graph, $"network{network}", networks[network]);
        return graph.Node("Sum", [.. Enumerable.Range(0, networks.Length).Select(network => $"network{network}.output.sums")], "sums")
            .Node("Mul", ["sums", "cooled"], "output.cooled")
            .Node("Softmax", ["output.cooled"], "certainty", ("axis", [1], false))
            .ToModel("digits", ("ink", [GlyphImage.Side, GlyphImage.Side]), ("certainty", [GlyphSample.Classes]));
    }

    private static void Add(OnnxGraph graph, string network, ReadOnlySpan<float> parameters)
    {
        for (var layer = 0; layer < 3; layer++)
        {
            var (_, rows, columns) = Parameters.Layers[layer];
            var name = $"{network}.{Parameters.Layers[layer].Name}";
            graph.Constant($"{name}.weights", Kernels(parameters, layer), columns, rows / 9, 3, 3)
                .Constant($"{name}.biases", parameters.Slice(Parameters.BiasesOf(layer), columns), columns)
                .Node(
                    "Conv", [layer == 0 ? "plane" : $"{network}.plane{layer}", $"{name}.weights", $"{name}.biases"], $"{name}.sums",
                    ("kernel_shape", [3, 3], true), ("pads", [1, 1, 1, 1], true))
                .Node("Relu", [$"{name}.sums"], $"{name}.results")
                .Node(
                    "MaxPool", [$"{name}.results"], $"{network}.plane{layer + 1}", ("kernel_shape", [2, 2], true), ("strides", [2, 2], true));
        }

        graph.Node("Flatten", [$"{network}.plane3"], $"{network}.flat", ("axis", [1], false))
            .Constant($"{network}.hidden.weights", ByChannel(parameters), Parameters.Flat, Parameters.Hidden)
            .Constant($"{network}.hidden.biases", parameters.Slice(Parameters.BiasesOf(3), Parameters.Hidden), Parameters.Hidden)
            .Node("Gemm", [$"{network}.flat", $"{network}.hidden.weights", $"{network}.hidden.biases"], $"{network}.hidden.sums")
            .Node("Relu", [$"{network}.hidden.sums"], $"{network}.hidden.results")
            .Constant($"{network}.output.weights", OfClasses(parameters), Parameters.Hidden, GlyphSample.Classes)
            .Constant($"{network}.output.biases", parameters.Slice(Parameters.BiasesOf(4), GlyphSample.Classes), GlyphSample.Classes)
            .Node("Gemm", [$"{network}.hidden.results", $"{network}.output.weights", $"{network}.output.biases"], $"{network}.output.sums");
    }

    /// <summary>From (line, column, input) by output, as they are trained, to output by input by line by column.</summary>
    private static float[] Kernels(ReadOnlySpan<float> parameters, int layer)
    {
        var (_, rows, columns) = Parameters.Layers[layer];
        var (inputs, from) = (rows / 9, Parameters.WeightsOf(layer));
        var kernels = new float[rows * columns];
        for (var output = 0; output < columns; output++)
            for (var input = 0; input < inputs; input++)
                for (var place = 0; place < 9; place++)
                    kernels[(output * inputs + input) * 9 + place] = parameters[from + (place * inputs + input) * columns + output];
        return kernels;
    }

    /// <summary>The first full layer with its inputs channel by channel; it is trained with them place by place.</summary>
    private static float[] ByChannel(ReadOnlySpan<float> parameters)
    {
        var from = parameters.Slice(Parameters.WeightsOf(3), Parameters.Flat * Parameters.Hidden);
        var weights = new float[from.Length];
        for (var place = 0; place < 9; place++)
            for (var channel = 0; channel < Parameters.Third; channel++)
                from.Slice((place * Parameters.Third + channel) * Parameters.Hidden, Parameters.Hidden)
                    .CopyTo(weights.AsSpan((channel * 9 + place) * Parameters.Hidden));
        return weights;
    }

    /// <summary>The last layer without the columns that fill it up.</summary>
    private static float[] OfClasses(ReadOnlySpan<float> parameters)
    {
        var weights = parameters[Parameters.WeightsOf(4)..];
        var classes = new float[Parameters.Hidden * GlyphSample.Classes];
        for (var row = 0; row < Parameters.Hidden; row++)
            weights.Slice(row * Parameters.Outputs, GlyphSample.Classes).CopyTo(classes.AsSpan(row * GlyphSample.Classes));
        return classes;
    }
}
