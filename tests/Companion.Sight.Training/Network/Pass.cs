using System.Numerics.Tensors;
using Companion.Sight.Samples;

namespace Companion.Sight.Training.Network;

/// <summary>Takes single glyphs through the network and back. Each thread has its own.</summary>
internal sealed unsafe class Pass
{
    private const int Pixels = GlyphImage.Side * GlyphImage.Side;

    private readonly Convolution[] _convolutions = [new(0, 24), new(1, 12), new(2, 6)];
    private readonly Buffer _flat = new(Parameters.Flat), _flatGradient = new(Parameters.Flat);
    private readonly Buffer _hidden = new(Parameters.Hidden), _hiddenGradient = new(Parameters.Hidden);
    private readonly float[] _kept = new float[Parameters.Flat];

    /// <summary>The sums that come out, one for each class; the certainties after <see cref="Learn"/>.</summary>
    public Buffer Output { get; } = new(Parameters.Outputs);

    /// <summary>The gradients of all weights, summed up over the glyphs.</summary>
    public Buffer Gradients { get; } = new(Parameters.Count);

    /// <summary>Clears the gradients and takes note of new weights.</summary>
    public void Begin(Buffer parameters)
    {
        Gradients.Span.Clear();
        foreach (var convolution in _convolutions)
            convolution.Turn(parameters.At);
    }

    /// <summary>Reads one glyph.</summary>
    /// <param name="parameters">All weights.</param>
    /// <param name="ink">The glyph, 0 to 255 for each pixel.</param>
    /// <param name="lot">Where given, some numbers are left out by lot, so that the network learns not to rely on single ones.</param>
    public void Forward(Buffer parameters, ReadOnlySpan<byte> ink, Random? lot = null)
    {
        var input = _convolutions[0].Input.At;
        for (var index = 0; index < Pixels; index++)
            input[(index / GlyphImage.Side + 1) * (GlyphImage.Side + 2) + index % GlyphImage.Side + 1] = ink[index] / 255f;
        _convolutions[0].Forward(parameters.At, _convolutions[1].Input.At, 1);
        _convolutions[1].Forward(parameters.At, _convolutions[2].Input.At, 1);
        _convolutions[2].Forward(parameters.At, _flat.At, 0);
        const float LeftOut = 0.25f;
        for (var index = 0; index < _kept.Length && lot is not null; index++)
        {
            _kept[index] = lot.NextSingle() < LeftOut ? 0 : 1 / (1 - LeftOut);
            _flat.At[index] *= _kept[index];
        }

        Full(parameters.At, 3, _flat, _hidden);
        foreach (ref var value in _hidden.Span)
            value = Math.Max(0, value);
        Full(parameters.At, 4, _hidden, Output);
    }

    /// <summary>Reads one glyph and adds the gradients of its loss, the cross-entropy.</summary>
    /// <returns>The loss.</returns>
    public double Learn(Buffer parameters, ReadOnlySpan<byte> ink, int wanted, Random lot)
    {
        Forward(parameters, ink, lot);
        Softmax(Output.Span[..GlyphSample.Classes]);
        Output.Span[GlyphSample.Classes..].Clear();
        var loss = -Math.Log(Math.Max(1e-12, Output.At[wanted]));
        Output.At[wanted] -= 1;
        FullBack(parameters.At, 4, _hidden, _hiddenGradient);
        for (var index = 0; index < Parameters.Hidden; index++)
            _hiddenGradient.At[index] = _hidden.At[index] > 0 ? _hiddenGradient.At[index] : 0;
        FullBack(parameters.At, 3, _flat, _flatGradient);
        for (var index = 0; index < _kept.Length; index++)
            _flatGradient.At[index] *= _kept[index];
        _convolutions[2].Backward(_flatGradient.At, 0, Gradients.At);
        _convolutions[1].Backward(_convolutions[2].InputGradient.At, 1, Gradients.At);
        _convolutions[0].Backward(_convolutions[1].InputGradient.At, 1, Gradients.At);
        return loss;
    }

    /// <summary>From sums to parts of 1.</summary>
    public static void Softmax(Span<float> values)
    {
        var (greatest, sum) = (float.NegativeInfinity, 0f);
        foreach (var value in values)
            greatest = Math.Max(greatest, value);
        foreach (ref var value in values)
            sum += value = MathF.Exp(value - greatest);
        foreach (ref var value in values)
            value /= sum;
    }

    private static void Full(float* parameters, int layer, Buffer input, Buffer output)
    {
        new ReadOnlySpan<float>(parameters + Parameters.BiasesOf(layer), output.Length).CopyTo(output.Span);
        Product.Add(1, output.Length, input.Length, input.At, input.Length, 1, parameters + Parameters.WeightsOf(layer), output.At);
    }

    private void FullBack(float* parameters, int layer, Buffer input, Buffer inputGradient)
    {
        var output = layer == 4 ? Output : _hiddenGradient;
        var columns = output.Length;
        Product.Add(input.Length, columns, 1, input.At, 1, input.Length, output.At, Gradients.At + Parameters.WeightsOf(layer));
        Product.Add(1, columns, 1, One.At, 1, 1, output.At, Gradients.At + Parameters.BiasesOf(layer));
        var weights = parameters + Parameters.WeightsOf(layer);
        for (var row = 0; row < input.Length; row++)
            inputGradient.At[row] = TensorPrimitives.Dot(new ReadOnlySpan<float>(weights + row * columns, columns), output.Span);
    }

    private static readonly Buffer One = Ones();

    private static Buffer Ones()
    {
        var one = new Buffer(1);
        one.At[0] = 1;
        return one;
    }
}
