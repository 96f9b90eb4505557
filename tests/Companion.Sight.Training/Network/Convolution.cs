using System.Numerics.Tensors;
using System.Runtime.Intrinsics;

namespace Companion.Sight.Training.Network;

/// <summary>
/// Three by three weights on each place, then no less than zero, then the greatest of each two by two. Planes have a border of one
/// and hold their channels place by place.
/// </summary>
internal sealed unsafe class Convolution
{
    // Channels are taken by as many as a vector holds; each greatest value comes from one of four corners, or from none above zero.
    private const int Lanes = 16, Corners = 4;
    private const float None = -1;

    private readonly int _layer, _side, _inputs, _outputs;
    private readonly bool _isFirst;
    private readonly Buffer _patches, _results, _resultGradients, _patchGradients, _turned, _greatest;

    /// <summary>A layer for one image at a time.</summary>
    /// <param name="layer">Its index in <see cref="Parameters.Layers"/>.</param>
    /// <param name="side">Columns and rows of its input, without the border.</param>
    public Convolution(int layer, int side)
    {
        (_layer, _side, _isFirst) = (layer, side, layer == 0);
        (_inputs, _outputs) = (Parameters.Layers[layer].Rows / 9, Parameters.Layers[layer].Columns);
        Input = new((side + 2) * (side + 2) * _inputs);
        InputGradient = new(Input.Length);
        _patches = new(side * side * 9 * _inputs);
        _patchGradients = new(_patches.Length);
        _results = new(side * side * _outputs);
        _resultGradients = new(_results.Length);
        _turned = new(9 * _inputs * _outputs);
        _greatest = new(side / 2 * (side / 2) * _outputs);
    }

    /// <summary>What goes in, with its border of zeros.</summary>
    public Buffer Input { get; }

    /// <summary>How the loss grows with what goes in, with a border that means nothing.</summary>
    public Buffer InputGradient { get; }

    /// <summary>To be called when the weights changed, before <see cref="Backward"/>.</summary>
    public void Turn(float* parameters)
    {
        var weights = parameters + Parameters.WeightsOf(_layer);
        for (var row = 0; row < 9 * _inputs; row++)
            for (var column = 0; column < _outputs; column++)
                _turned.At[column * 9 * _inputs + row] = weights[row * _outputs + column];
    }

    /// <summary>From <see cref="Input"/> to the plane of the next layer.</summary>
    /// <param name="parameters">All weights.</param>
    /// <param name="output">The first number of what comes out.</param>
    /// <param name="border">The output's border, 0 or 1.</param>
    public void Forward(float* parameters, float* output, int border)
    {
        var segment = 3 * _inputs;
        var stride = (_side + 2) * _inputs;
        for (var y = 0; y < _side; y++)
            for (var x = 0; x < _side; x++)
                for (var line = 0; line < 3; line++)
                    new ReadOnlySpan<float>(Input.At + (y + line) * stride + x * _inputs, segment)
                        .CopyTo(new(_patches.At + ((y * _side + x) * 3 + line) * segment, segment));
        var biases = new ReadOnlySpan<float>(parameters + Parameters.BiasesOf(_layer), _outputs);
        for (var place = 0; place < _side * _side; place++)
            biases.CopyTo(new(_results.At + place * _outputs, _outputs));
        Product.Add(_side * _side, _outputs, 9 * _inputs, _patches.At, 9 * _inputs, 1, parameters + Parameters.WeightsOf(_layer), _results.At);
        Halve(output, border);
    }

    private void Halve(float* output, int border)
    {
        var half = _side / 2;
        for (var y = 0; y < half; y++)
            for (var x = 0; x < half; x++)
            {
                var from = _results.At + (2 * y * _side + 2 * x) * _outputs;
                var to = output + ((y + border) * (half + 2 * border) + x + border) * _outputs;
                for (var channel = 0; channel < _outputs; channel += Lanes)
                {
                    var (best, which) = (Vector512<float>.Zero, Vector512.Create(None));
                    for (var corner = 0; corner < Corners; corner++)
                    {
                        var value = Vector512.Load(from + ((corner >> 1) * _side + (corner & 1)) * _outputs + channel);
                        which = Vector512.ConditionalSelect(Vector512.GreaterThan(value, best), Vector512.Create((float)corner), which);
                        best = Vector512.Max(value, best);
                    }

                    best.Store(to + channel);
                    which.Store(_greatest.At + (y * half + x) * _outputs + channel);
                }
            }
    }

    /// <summary>From the gradient of what came out to those of the weights and of what went in.</summary>
    /// <param name="outputGradient">Laid out as the output was.</param>
    /// <param name="border">The output's border, 0 or 1.</param>
    /// <param name="gradients">Gradients of all weights, which are added to.</param>
    public void Backward(float* outputGradient, int border, float* gradients)
    {
        Spread(outputGradient, border);
        var (places, rows) = (_side * _side, 9 * _inputs);
        Product.Add(rows, _outputs, places, _patches.At, 1, rows, _resultGradients.At, gradients + Parameters.WeightsOf(_layer));
        var biases = gradients + Parameters.BiasesOf(_layer);
        for (var place = 0; place < places; place++)
            for (var channel = 0; channel < _outputs; channel++)
                biases[channel] += _resultGradients.At[place * _outputs + channel];
        if (_isFirst)
            return;

        _patchGradients.Span.Clear();
        Product.Add(places, rows, _outputs, _resultGradients.At, _outputs, 1, _turned.At, _patchGradients.At);
        InputGradient.Span.Clear();
        var (segment, stride) = (3 * _inputs, (_side + 2) * _inputs);
        for (var y = 0; y < _side; y++)
            for (var x = 0; x < _side; x++)
                for (var line = 0; line < 3; line++)
                {
                    var target = new Span<float>(InputGradient.At + (y + line) * stride + x * _inputs, segment);
                    TensorPrimitives.Add(
                        target, new ReadOnlySpan<float>(_patchGradients.At + ((y * _side + x) * 3 + line) * segment, segment), target);
                }
    }

    /// <summary>Each gradient goes to the place that was the greatest of its four, and nowhere where all were below zero.</summary>
    private void Spread(float* outputGradient, int border)
    {
        var half = _side / 2;
        for (var y = 0; y < half; y++)
            for (var x = 0; x < half; x++)
            {
                var from = outputGradient + ((y + border) * (half + 2 * border) + x + border) * _outputs;
                var to = _resultGradients.At + (2 * y * _side + 2 * x) * _outputs;
                for (var channel = 0; channel < _outputs; channel += Lanes)
                {
                    var gradient = Vector512.Load(from + channel);
                    var which = Vector512.Load(_greatest.At + (y * half + x) * _outputs + channel);
                    for (var corner = 0; corner < Corners; corner++)
                        Vector512.ConditionalSelect(Vector512.Equals(which, Vector512.Create((float)corner)), gradient, Vector512<float>.Zero)
                            .Store(to + ((corner >> 1) * _side + (corner & 1)) * _outputs + channel);
                }
            }
    }
}
