using System.Collections.Immutable;
using Companion.Engine;

namespace Companion.Sight;

/// <summary>
/// Reads digits with a small network, which <c>tests/Companion.Sight.Training</c> makes; <c>Weights/README.md</c> tells how, and how well
/// it reads. May be used by several threads at once.
/// </summary>
public sealed class GlyphReader : IDisposable
{
    private const int Pixels = GlyphImage.Side * GlyphImage.Side;

    // The nine digits, then no digit.
    private const int Classes = Digit.Count + 1;

    private static readonly Lazy<GlyphReader> TheStandard = new(() => new(StoredNetwork.Brought("digits.onnx")));

    private readonly StoredNetwork _network;

    /// <summary>Makes a reader.</summary>
    /// <param name="network">An ONNX model from <c>ink</c>, glyphs by rows by columns, to <c>certainty</c>, glyphs by classes.</param>
    internal GlyphReader(byte[] network) => _network = new(network);

    /// <summary>The reader with the network that the companion brings along. It is loaded when first asked for, and for all.</summary>
    public static GlyphReader Standard => TheStandard.Value;

    /// <summary>Reads glyphs, all in one go, in their order.</summary>
    /// <param name="glyphs">The glyphs.</param>
    public ImmutableArray<GlyphReading> Read(IReadOnlyList<GlyphImage> glyphs) => Read(glyphs, Lessons.None);

    /// <summary>Reads glyphs, all in one go, in their order.</summary>
    /// <param name="glyphs">The glyphs.</param>
    /// <param name="lessons">What the presenter taught: a glyph that is like a taught one is read as that.</param>
    public ImmutableArray<GlyphReading> Read(IReadOnlyList<GlyphImage> glyphs, Lessons lessons)
    {
        ArgumentNullException.ThrowIfNull(glyphs);
        ArgumentNullException.ThrowIfNull(lessons);
        if (glyphs.Count == 0)
            return [];

        // What was taught is read with the rest, to know where the network itself tells a glyph from a taught one.
        var (count, taught) = (glyphs.Count, lessons.Taught);
        var ink = new float[(count + taught.Length) * Pixels];
        for (var index = 0; index < count; index++)
            glyphs[index].Ink.CopyTo(ink, index * Pixels);
        for (var index = 0; index < taught.Length; index++)
            taught[index].Glyph.Ink.CopyTo(ink, (count + index) * Pixels);
        var readings = Read(ink, count + taught.Length);
        for (var index = 0; index < count && taught.Length > 0; index++)
            readings[index] = lessons.Recall(glyphs[index], readings[index], readings.AsSpan(count)) ?? readings[index];
        return ImmutableArray.Create(readings, 0, count);
    }

    /// <inheritdoc/>
    void IDisposable.Dispose() => _network.Dispose();

    private GlyphReading[] Read(float[] ink, int count) => _network.Read(ink, [count, GlyphImage.Side, GlyphImage.Side], certainties =>
    {
        var readings = new GlyphReading[count];
        for (var index = 0; index < count; index++)
            readings[index] = Surest(certainties.Slice(index * Classes, Classes));
        return readings;
    });

    /// <summary>The surest class. It is as sure as its certainty is ahead of the next one's.</summary>
    private static GlyphReading Surest(ReadOnlySpan<float> certainties)
    {
        var (surest, first, second) = (0, 0f, 0f);
        for (var index = 0; index < Classes; index++)
            if (certainties[index] > first)
                (surest, first, second) = (index, certainties[index], first);
            else
                second = Math.Max(second, certainties[index]);
        return new(surest < Digit.Count ? Digit.Of(surest + 1) : null, first - second) { Odds = [.. certainties[..Digit.Count]] };
    }
}
