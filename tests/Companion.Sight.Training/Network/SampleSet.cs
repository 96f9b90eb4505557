using Companion.Sight.Samples;
using static TorchSharp.torch;

namespace Companion.Sight.Training.Network;

/// <summary>Many samples, held as bytes.</summary>
/// <param name="Ink">The glyphs, 0 to 255 for each pixel.</param>
/// <param name="Kinds">Their classes.</param>
/// <param name="Families">The families they were drawn in.</param>
internal sealed record SampleSet(byte[] Ink, byte[] Kinds, string[] Families) : ITrainingSet
{
    private const int Pixels = GlyphImage.Side * GlyphImage.Side;

    /// <summary>Samples are drawn by so many at a time.</summary>
    public const int Portion = 250;

    /// <inheritdoc/>
    public NetworkShape Shape => NetworkShape.Digits;

    /// <inheritdoc/>
    public int Count => Kinds.Length;

    /// <summary>One glyph.</summary>
    public ReadOnlySpan<byte> this[int index] => Ink.AsSpan(index * Pixels, Pixels);

    /// <summary>One glyph, as the reader takes it.</summary>
    public GlyphImage Image(int index) => new([.. this[index].ToArray().Select(value => value / 255f)]);

    /// <inheritdoc/>
    public Tensor Images(ReadOnlySpan<int> indices)
    {
        var ink = new byte[indices.Length * Pixels];
        for (var index = 0; index < indices.Length; index++)
            this[indices[index]].CopyTo(ink.AsSpan(index * Pixels));
        return tensor(ink, [indices.Length, 1, GlyphImage.Side, GlyphImage.Side]).to(float32) / 255;
    }

    /// <inheritdoc/>
    public Tensor Loss(ReadingNetwork network, ReadOnlySpan<int> indices)
    {
        var kinds = new long[indices.Length];
        for (var index = 0; index < indices.Length; index++)
            kinds[index] = Kinds[indices[index]];
        return nn.functional.cross_entropy(network.forward(Images(indices)), tensor(kinds));
    }

    /// <summary>Draws samples, half of them big digits and half of them small marks unless one range is given.</summary>
    /// <param name="seed">The same one gives the same samples.</param>
    /// <param name="count">How many, a multiple of <see cref="Portion"/>.</param>
    /// <param name="families">The families to choose from.</param>
    /// <param name="threads">How many threads draw.</param>
    /// <param name="ranges">Which ones, in turn.</param>
    public static SampleSet Draw(int seed, int count, IReadOnlyList<FontFamily> families, int threads, params SampleRange[] ranges)
    {
        var set = new SampleSet(new byte[count * Pixels], new byte[count], new string[count]);
        Parallel.For(0, count / Portion, new() { MaxDegreeOfParallelism = threads }, portion =>
        {
            var random = new Random(unchecked(seed * (int)0x9E3779B1 ^ portion * (int)0x85EBCA6B));
            for (var index = portion * Portion; index < (portion + 1) * Portion; index++)
            {
                var sample = SampleDrawing.Draw(random, families, ranges[index % ranges.Length]);
                (set.Kinds[index], set.Families[index]) = ((byte)sample.Class, sample.Family);
                for (var pixel = 0; pixel < Pixels; pixel++)
                    set.Ink[index * Pixels + pixel] = (byte)MathF.Round(255 * sample.Image.Ink[pixel]);
            }
        });
        return set;
    }
}
