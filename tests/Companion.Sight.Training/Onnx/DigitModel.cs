using Companion.Sight.Samples;
using Companion.Sight.Training.Network;

namespace Companion.Sight.Training.Onnx;

/// <summary>The network as a model, from ink to certainties.</summary>
internal static class DigitModel
{
    /// <summary>Writes it.</summary>
    /// <param name="parameters">All weights.</param>
    /// <param name="temperature">What the sums are divided by before they become certainties.</param>
    public static byte[] Write(ReadOnlySpan<float> parameters, float temperature)
    {
        var graph = new OnnxGraph()
            .Constant("planes", [0, 1, GlyphImage.Side, GlyphImage.Side])
            .Constant("cooled", [1 / temperature], [1])
            .Node("Reshape", ["ink", "planes"], "plane0");
        for (var layer = 0; layer < 3; layer++)
        {
            var (name, rows, columns) = Parameters.Layers[layer];
            graph.Constant($"{name}.weights", Kernels(parameters, layer), columns, rows / 9, 3, 3)
                .Constant($"{name}.biases", parameters.Slice(Parameters.BiasesOf(layer), columns), columns)
                .Node(
                    "Conv", [$"plane{layer}", $"{name}.weights", $"{name}.biases"], $"{name}.sums",
                    ("kernel_shape", [3, 3], true), ("pads", [1, 1, 1, 1], true))
                .Node("Relu", [$"{name}.sums"], $"{name}.results")
                .Node(
                    "MaxPool", [$"{name}.results"], $"plane{layer + 1}", ("kernel_shape", [2, 2], true), ("strides", [2, 2], true));
        }

        return graph.Node("Flatten", ["plane3"], "flat", ("axis", [1], false))
            .Constant("hidden.weights", ByChannel(parameters), Parameters.Flat, Parameters.Hidden)
            .Constant("hidden.biases", parameters.Slice(Parameters.BiasesOf(3), Parameters.Hidden), Parameters.Hidden)
            .Node("Gemm", ["flat", "hidden.weights", "hidden.biases"], "hidden.sums")
            .Node("Relu", ["hidden.sums"], "hidden.results")
            .Constant("output.weights", OfClasses(parameters), Parameters.Hidden, GlyphSample.Classes)
            .Constant("output.biases", parameters.Slice(Parameters.BiasesOf(4), GlyphSample.Classes), GlyphSample.Classes)
            .Node("Gemm", ["hidden.results", "output.weights", "output.biases"], "output.sums")
            .Node("Mul", ["output.sums", "cooled"], "output.cooled")
            .Node("Softmax", ["output.cooled"], "certainty", ("axis", [1], false))
            .ToModel("digits", ("ink", [GlyphImage.Side, GlyphImage.Side]), ("certainty", [GlyphSample.Classes]));
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
