using Companion.Sight.Reading;
using Companion.Sight.Samples;
using Companion.Sight.Training.Boards;
using static TorchSharp.torch;

namespace Companion.Sight.Training.Network;

/// <summary>Signs as they are found on painted boards, held as bytes.</summary>
/// <param name="Planes">The images, 0 to 255 for each value.</param>
/// <param name="Kinds">Their classes.</param>
/// <param name="Lines">1 where a line goes through it, 0 where none does.</param>
/// <param name="Covers">1 where much of it is covered, 0 where hardly anything is, <see cref="Between"/> where nobody has to tell.</param>
internal sealed record SignSet(byte[] Planes, byte[] Kinds, byte[] Lines, byte[] Covers) : ITrainingSet
{
    // Of one board, so that no face or size has too much weight.
    private const int MostMarks = 44, MostDigits = 10, MostOthers = 10, MostSecondLooks = 12, MostTouched = 12;

    // Of the ink: as much as makes another digit of most, and so little that it makes none.
    private const float Much = 0.2f, HardlyAny = 0.08f;

    /// <summary>More is covered than hardly anything, and less than much.</summary>
    public const byte Between = 2;

    // Boards are painted by so many at a time.
    private const int Portion = 10;

    /// <inheritdoc/>
    public NetworkShape Shape => NetworkShape.Signs;

    /// <inheritdoc/>
    public int Count => Kinds.Length;

    /// <summary>Whether one is a digit.</summary>
    public bool IsDigit(int index) => Kinds[index] != GlyphSample.NoDigit;

    /// <summary>What a reader says of them.</summary>
    public IEnumerable<SignReading> Read(SignReader reader) => Enumerable.Range(0, Count).Chunk(SampleSet.Portion).SelectMany(portion =>
        reader.Read([.. portion.SelectMany(index => new ArraySegment<byte>(Planes, index * SignImage.Values, SignImage.Values)).Select(value => value / 255f)], portion.Length));

    /// <summary>Paints boards and takes signs from them.</summary>
    /// <param name="seed">The same one gives the same signs.</param>
    /// <param name="boards">How many boards, a multiple of ten.</param>
    /// <param name="families">The families to choose from.</param>
    /// <param name="threads">How many threads paint.</param>
    public static SignSet Paint(int seed, int boards, IReadOnlyList<FontFamily> families, int threads)
    {
        var byName = families.ToDictionary(family => family.Name);
        var portions = new SignSet[boards / Portion];
        Parallel.For(0, portions.Length, new() { MaxDegreeOfParallelism = threads }, portion =>
        {
            var samples = Enumerable.Range(portion * Portion, Portion).SelectMany(board => Few(unchecked(seed * (int)0x9E3779B1 ^ board * (int)0x85EBCA6B), byName)).ToList();
            var set = new SignSet(new byte[samples.Count * SignImage.Values], new byte[samples.Count], new byte[samples.Count], new byte[samples.Count]);
            var values = new float[SignImage.Values];
            for (var index = 0; index < samples.Count; index++)
            {
                SignImage.Draw(samples[index].Sign, values);
                for (var value = 0; value < values.Length; value++)
                    set.Planes[index * values.Length + value] = (byte)MathF.Round(255 * values[value]);
                (set.Kinds[index], set.Lines[index]) = ((byte)samples[index].Class, (byte)(samples[index].IsStruck ? 1 : 0));
                set.Covers[index] = samples[index].Covered switch { >= Much => 1, <= HardlyAny => 0, _ => Between };
            }

            portions[portion] = set;
        });
        return new(
            [.. portions.SelectMany(set => set.Planes)], [.. portions.SelectMany(set => set.Kinds)], [.. portions.SelectMany(set => set.Lines)],
            [.. portions.SelectMany(set => set.Covers)]);
    }

    /// <inheritdoc/>
    public Tensor Images(ReadOnlySpan<int> indices)
    {
        var images = new byte[indices.Length * SignImage.Values];
        for (var index = 0; index < indices.Length; index++)
            Planes.AsSpan(indices[index] * SignImage.Values, SignImage.Values).CopyTo(images.AsSpan(index * SignImage.Values));
        return tensor(images, [indices.Length, SignImage.Planes, SignImage.Side, SignImage.Side]).to(float32) / 255;
    }

    /// <inheritdoc/>
    public Tensor Loss(ReadingNetwork network, ReadOnlySpan<int> indices)
    {
        var kinds = new long[indices.Length];
        var (lines, covers, isDigit, isTold) = (new float[indices.Length], new float[indices.Length], new float[indices.Length], new float[indices.Length]);
        for (var index = 0; index < indices.Length; index++)
        {
            var sample = indices[index];
            (kinds[index], lines[index], covers[index]) = (Kinds[sample], Lines[sample], Covers[sample]);
            // Whether a line goes through what is no digit, or what covers it, is nothing to anybody.
            isDigit[index] = IsDigit(sample) ? 1 : 0;
            isTold[index] = Covers[sample] == Between ? 0 : isDigit[index];
        }

        var sums = network.forward(Images(indices));
        return nn.functional.cross_entropy(sums.slice(1, 0, GlyphSample.Classes, 1), tensor(kinds))
            + nn.functional.binary_cross_entropy_with_logits(sums.select(1, GlyphSample.Classes), tensor(lines), tensor(isDigit))
            + nn.functional.binary_cross_entropy_with_logits(sums.select(1, GlyphSample.Classes + 1), tensor(covers), tensor(isTold));
    }

    private static IEnumerable<SignSample> Few(int seed, IReadOnlyDictionary<string, FontFamily> families)
    {
        var random = new Random(seed);
        var all = SignSample.Of(PaintedBoard.Of(seed, families)).ToArray();
        random.Shuffle(all);
        bool IsTouched((SignSample Sample, bool IsSecondLook) one) => one.Sample.Covered > 0;
        bool IsNone((SignSample Sample, bool IsSecondLook) one) => one.Sample.Class == GlyphSample.NoDigit;
        var signs = all.Where(one => !one.IsSecondLook && !IsTouched(one)).ToList();
        return all.Where(IsTouched).Take(MostTouched).Concat(signs.Where(IsNone).Take(MostOthers))
            .Concat(signs.Where(one => !IsNone(one) && !one.Sample.IsBig).Take(MostMarks))
            .Concat(signs.Where(one => !IsNone(one) && one.Sample.IsBig).Take(MostDigits))
            .Concat(all.Where(one => one.IsSecondLook && !IsTouched(one)).Take(MostSecondLooks))
            .Select(one => one.Sample);
    }
}
