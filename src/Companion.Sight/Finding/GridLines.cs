using System.Collections.Immutable;

namespace Companion.Sight.Finding;

/// <summary>The ten lines of a grid in one direction.</summary>
/// <param name="At">The middle of each line, in pixels, ascending.</param>
/// <param name="Half">Half of each line's thickness, in pixels.</param>
/// <param name="Support">For each line the part of the nine cells beside it along which it was seen, from 0 to 1.</param>
internal sealed record GridLines(ImmutableArray<float> At, ImmutableArray<float> Half, ImmutableArray<float> Support)
{
    /// <summary>Lines in one direction.</summary>
    public const int Count = 10;

    /// <summary>From one line to the next, on average.</summary>
    public float Pitch => (At[^1] - At[0]) / (Count - 1);

    /// <summary>How well the eight inner lines were seen, from 0 to 1.</summary>
    public float InnerSupport => Support.AsSpan()[1..^1] is var inner ? Mean(inner) : 0;

    /// <summary>The support of that inner line which was seen worst.</summary>
    public float LeastSupport => Support[1..^1].Min();

    /// <summary>
    /// By how many lines the grid lies further on than it was taken for: -1, 0 or 1. Lines between blocks are mostly bolder than the
    /// others; a grid without a border may be taken for one that begins a line too early or too late.
    /// </summary>
    public int Shift
    {
        get
        {
            foreach (var shift in (ReadOnlySpan<int>)[-1, 1])
            {
                if (IsBold(3 + shift) && IsBold(6 + shift) && !IsBold(3) && !IsBold(6))
                    return shift;
            }

            return 0;
        }
    }

    /// <summary>By how many lines the grid may lie further on, as <see cref="Shift"/> counts them, where an outer line was not seen.</summary>
    public IEnumerable<int> MayLieFurther()
    {
        const float Well = 0.6f;
        if (Support[0] < Well)
            yield return 1;
        if (Support[^1] < Well)
            yield return -1;
    }

    /// <summary>Where two of these lines cross, when they run in both directions.</summary>
    /// <param name="column">The upright line, from 0.</param>
    /// <param name="row">The level line, from 0.</param>
    public PixelPoint Crossing(int column, int row) => new(At[column], At[row]);

    /// <summary>Lines at even distances, seen nowhere yet.</summary>
    /// <param name="from">The first one.</param>
    /// <param name="to">The last one.</param>
    public static GridLines Even(float from, float to) => new(
        [.. Enumerable.Range(0, Count).Select(line => from + line * (to - from) / (Count - 1))],
        [.. new float[Count]],
        [.. new float[Count]]);

    // Clearly thicker than the middle one of all inner lines.
    private bool IsBold(int line)
    {
        const float Thicker = 0.75f;
        float[] inner = [.. Half[1..^1].Order()];
        return Half[line] >= inner[inner.Length / 2] + Thicker;
    }

    private static float Mean(ReadOnlySpan<float> values)
    {
        var sum = 0f;
        foreach (var value in values)
            sum += value;
        return sum / values.Length;
    }
}
