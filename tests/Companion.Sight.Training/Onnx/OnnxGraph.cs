using System.Numerics.Tensors;
using System.Runtime.InteropServices;

namespace Companion.Sight.Training.Onnx;

/// <summary>
/// Writes a network as an ONNX model: the messages of <c>onnx.proto</c> (github.com/onnx/onnx), whose field numbers stand below.
/// </summary>
internal sealed class OnnxGraph
{
    private const int Float = 1, Int64 = 7, Float16 = 10;
    private const int FormatVersion = 9, OperatorVersion = 17;

    private readonly ProtocolMessage _graph = new();

    /// <summary>Numbers that the graph brings along.</summary>
    public OnnxGraph Constant(string name, ReadOnlySpan<float> values, params ReadOnlySpan<long> shape) =>
        Tensor(name, Float, MemoryMarshal.AsBytes(values).ToArray(), shape);

    /// <summary>Numbers that the graph brings along in half the bytes: they lose all but their first three digits.</summary>
    public OnnxGraph Half(string name, ReadOnlySpan<float> values, params ReadOnlySpan<long> shape)
    {
        var halves = new Half[values.Length];
        TensorPrimitives.ConvertToHalf(values, halves);
        return Tensor(name + ".half", Float16, MemoryMarshal.AsBytes<Half>(halves).ToArray(), shape)
            .Node("Cast", [name + ".half"], name, ("to", [Float], false));
    }

    /// <summary>Whole numbers that the graph brings along.</summary>
    public OnnxGraph Constant(string name, params ReadOnlySpan<long> values) =>
        Tensor(name, Int64, MemoryMarshal.AsBytes(values).ToArray(), [values.Length]);

    /// <summary>An operation.</summary>
    /// <param name="operation">Its name in the standard.</param>
    /// <param name="inputs">What goes in.</param>
    /// <param name="output">What comes out.</param>
    /// <param name="attributes">Lists of whole numbers, or single ones.</param>
    public OnnxGraph Node(string operation, string[] inputs, string output, params (string Name, long[] Values, bool IsList)[] attributes)
    {
        var node = new ProtocolMessage();
        foreach (var input in inputs)
            node.Add(1, input);
        node.Add(2, output).Add(4, operation);
        foreach (var (name, values, isList) in attributes)
            node.Add(5, isList
                ? new ProtocolMessage().Add(1, name).AddEach(8, values).Add(20, 7)
                : new ProtocolMessage().Add(1, name).Add(3, values[0]).Add(20, 2));
        _graph.Add(1, node);
        return this;
    }

    /// <summary>The whole model.</summary>
    /// <param name="name">What the graph is called.</param>
    /// <param name="input">The name and the shape of the input, after the number of the batch.</param>
    /// <param name="output">The name and the shape of the output, after the number of the batch.</param>
    public byte[] ToModel(string name, (string Name, long[] Shape) input, (string Name, long[] Shape) output) => new ProtocolMessage()
        .Add(1, FormatVersion)
        .Add(2, "Companion.Sight.Training")
        .Add(7, _graph.Add(2, name).Add(11, Value(input.Name, input.Shape)).Add(12, Value(output.Name, output.Shape)))
        .Add(8, new ProtocolMessage().Add(1, "").Add(2, OperatorVersion))
        .ToArray();

    private OnnxGraph Tensor(string name, int kind, byte[] values, ReadOnlySpan<long> shape)
    {
        _graph.Add(5, new ProtocolMessage().AddEach(1, shape).Add(2, kind).Add(8, name).Add(9, values));
        return this;
    }

    private static ProtocolMessage Value(string name, long[] shape)
    {
        var sizes = new ProtocolMessage().Add(1, new ProtocolMessage().Add(2, "glyphs"));
        foreach (var size in shape)
            sizes.Add(1, new ProtocolMessage().Add(1, size));
        var tensor = new ProtocolMessage().Add(1, Float).Add(2, sizes);
        return new ProtocolMessage().Add(1, name).Add(2, new ProtocolMessage().Add(1, tensor));
    }
}
