using System.Numerics.Tensors;
using System.Runtime.InteropServices;

namespace Companion.Sight.Finding;

/// <summary>
/// The steps across the lines of one direction, beside each of the nine cells along them. A step is the mean difference of
/// neighbouring pixels over many samples along the line: it keeps a line that is hardly visible, and noise averages out. Where the
/// samples differ much among themselves there is no step but the edge of a glyph.
/// </summary>
internal sealed class StepProfile
{
    // Samples along each cell, within the part of it that lines which cross do not reach.
    private const int Samples = 12;
    private static readonly (float From, float To)[] _inner = [(0.18f, 0.82f)];

    // Where big digits do not reach and crossing lines neither.
    private static readonly (float From, float To)[] _margins = [(0.08f, 0.17f), (0.83f, 0.92f)];

    // Of the mean square: the square of the mean. It is 1 for a clean line and the part that is covered for glyphs along a line.
    private const float Even = 0.55f;

    private readonly float[][] _steps;

    private StepProfile(int first, int count)
    {
        First = first;
        _steps = new float[GridLines.Count - 1][];
        for (var cell = 0; cell < _steps.Length; cell++)
            _steps[cell] = new float[count];
    }

    /// <summary>The first coordinate: between pixel <c>First - 1</c> and pixel <c>First</c>.</summary>
    public int First { get; }

    /// <summary>The coordinate after the last one.</summary>
    public int End => First + _steps[0].Length;

    /// <summary>What a step must have at least to be more than noise.</summary>
    public float Noise { get; private set; }

    /// <summary>Beside how many of the nine cells there is a step at a coordinate.</summary>
    /// <param name="at">From <see cref="First"/> on.</param>
    public int CountAt(int at)
    {
        var count = 0;
        foreach (var steps in _steps)
            count += steps[at - First] >= Noise ? 1 : 0;
        return count;
    }

    /// <summary>The median over the nine cells of the step at a coordinate.</summary>
    /// <param name="at">From <see cref="First"/> on.</param>
    public float MedianAt(int at)
    {
        Span<float> steps = stackalloc float[GridLines.Count - 1];
        for (var cell = 0; cell < steps.Length; cell++)
            steps[cell] = _steps[cell][at - First];
        steps.Sort();
        return steps[steps.Length / 2];
    }

    /// <summary>Where the line is beside one of the nine cells: the middle of its steps.</summary>
    /// <param name="cell">The cell, from 0.</param>
    /// <param name="expected">Where it is about.</param>
    /// <param name="reach">How far from there it may be.</param>
    /// <returns>The coordinate; null where there is no step.</returns>
    public float? PlaceIn(int cell, float expected, float reach)
    {
        const float Strong = 0.5f;
        var (from, to) = (Math.Max(First, (int)MathF.Ceiling(expected - reach)), Math.Min(End - 1, (int)(expected + reach)));
        if (from > to)
            return null;
        var steps = _steps[cell].AsSpan(from - First, to - from + 1);
        var strongest = 0f;
        foreach (var step in steps)
            strongest = Math.Max(strongest, step);
        if (strongest < Noise)
            return null;
        var (weights, sum) = (0f, 0f);
        for (var at = 0; at < steps.Length; at++)
        {
            if (steps[at] >= Strong * strongest)
                (weights, sum) = (weights + steps[at], sum + steps[at] * (from + at));
        }

        return sum / weights;
    }

    /// <summary>Measures.</summary>
    /// <param name="frame">The picture.</param>
    /// <param name="along">The lines that cross, at whose cells is measured.</param>
    /// <param name="from">The first coordinate that matters.</param>
    /// <param name="to">The last one.</param>
    /// <param name="isUpright">Whether the lines to be found are upright, and coordinates count to the right.</param>
    /// <param name="inMargins">Whether to measure only where big digits do not reach.</param>
    public static StepProfile Of(Frame frame, GridLines along, float from, float to, bool isUpright, bool inMargins = false)
    {
        var (length, depth) = isUpright ? (frame.Width, frame.Height) : (frame.Height, frame.Width);
        var first = Math.Clamp((int)from, 1, length - 1);
        var end = Math.Clamp((int)MathF.Ceiling(to) + 1, first + 1, length);
        var profile = new StepProfile(first, end - first);
        var pixels = MemoryMarshal.Cast<byte, uint>(frame.Pixels);
        var (step, across) = isUpright ? (1, frame.Width) : (frame.Width, 1);
        // One pixel before the first place, and four values to a pixel, which floats hold exactly.
        var strip = new uint[end - first + 1];
        var values = new float[4 * strip.Length];
        var (differences, sums, squares) = (new float[values.Length - 4], new float[values.Length - 4], new float[values.Length - 4]);
        for (var cell = 0; cell < GridLines.Count - 1; cell++)
        {
            var size = along.At[cell + 1] - along.At[cell];
            Array.Clear(sums);
            Array.Clear(squares);
            var rows = 0;
            foreach (var (start, stop) in inMargins ? _margins : _inner)
            {
                var count = Math.Clamp((int)((stop - start) * size), 1, Samples);
                for (var row = 0; row < count; row++, rows++)
                {
                    var y = along.At[cell] + (start + (row + 0.5f) * (stop - start) / count) * size;
                    var origin = Math.Clamp((int)y, 0, depth - 1) * across + (first - 1) * step;
                    for (var at = 0; at < strip.Length; at++)
                        strip[at] = pixels[origin + at * step];
                    TensorPrimitives.ConvertTruncating<byte, float>(MemoryMarshal.AsBytes(strip.AsSpan()), values);
                    TensorPrimitives.Subtract(values.AsSpan(4..), values.AsSpan(..^4), differences);
                    TensorPrimitives.Add<float>(sums, differences, sums);
                    TensorPrimitives.MultiplyAdd<float>(differences, differences, squares, squares);
                }
            }

            var steps = profile._steps[cell];
            for (var at = 0; at < steps.Length; at++)
                steps[at] = Step(sums.AsSpan(4 * at, 3), squares.AsSpan(4 * at, 3), rows);
        }

        profile.Noise = profile.Measure();
        return profile;
    }

    private static float Step(ReadOnlySpan<float> sums, ReadOnlySpan<float> squares, int rows)
    {
        var strongest = 0;
        for (var channel = 1; channel < 3; channel++)
            strongest = Math.Abs(sums[channel]) > Math.Abs(sums[strongest]) ? channel : strongest;
        var (sum, square) = (sums[strongest], squares[strongest]);
        return square > 0 && sum * sum / square >= Even * rows ? Math.Abs(sum) / rows : 0;
    }

    // Most places are ground or stand beside a glyph somewhere: what the quieter ones have is noise.
    private float Measure()
    {
        const float Quiet = 0.4f;
        const int Above = 4;
        var all = new float[_steps.Length * _steps[0].Length];
        for (var cell = 0; cell < _steps.Length; cell++)
            _steps[cell].CopyTo(all, cell * _steps[0].Length);
        return 1.2f + Above * Ranked.At(all, (int)(Quiet * all.Length));
    }
}
