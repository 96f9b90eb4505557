using Companion.Sight.Reading;
using Companion.Sight.Samples;
using Companion.Sight.Training.Boards;
using static TorchSharp.torch;

namespace Companion.Sight.Training.Network;

/// <summary>Cells of painted boards, held as bytes.</summary>
/// <param name="Cells">For each the image, 0 to 255 for each value, and what <see cref="CellSample"/> tells of its places.</param>
internal sealed record CellSamples(IReadOnlyList<(byte[] Image, byte[] Kinds, byte[] Lines)> Cells) : ITrainingSet
{
    private const int Places = CellSample.Places * CellSample.Places;

    /// <inheritdoc/>
    public NetworkShape Shape => NetworkShape.Cells;

    /// <inheritdoc/>
    public int Count => Cells.Count;

    /// <summary>How well a reader reads them.</summary>
    public CellTally Tally(CellReader reader)
    {
        var tally = new CellTally();
        foreach (var portion in Cells.Chunk(SampleSet.Portion))
        {
            float[] images = [.. portion.SelectMany(cell => cell.Image).Select(value => value / 127.5f - 1)];
            foreach (var (cell, findings) in portion.Zip(reader.Read(images, portion.Length)))
                tally.Add(cell.Kinds, cell.Lines, findings);
        }

        return tally;
    }

    /// <summary>Paints boards and takes cells from them.</summary>
    /// <param name="seed">The same one gives the same cells.</param>
    /// <param name="boards">How many boards.</param>
    /// <param name="families">The families to choose from.</param>
    /// <param name="threads">How many threads paint.</param>
    public static CellSamples Paint(int seed, int boards, IReadOnlyList<FontFamily> families, int threads)
    {
        var byName = families.ToDictionary(family => family.Name);
        var cells = new List<(byte[], byte[], byte[])>[boards];
        Parallel.For(0, boards, new() { MaxDegreeOfParallelism = threads }, board =>
        {
            var own = unchecked(seed * (int)0x9E3779B1 ^ board * (int)0x85EBCA6B);
            cells[board] = [.. CellSample.Of(PaintedBoard.Of(own, byName), new Random(own)).Select(sample => (Bytes(sample.Ink), sample.Kinds, sample.Lines))];
        });
        return new([.. cells.SelectMany(some => some)]);
    }

    /// <inheritdoc/>
    public Tensor Images(ReadOnlySpan<int> indices)
    {
        var images = new byte[indices.Length * CellImage.Values];
        for (var index = 0; index < indices.Length; index++)
            Cells[indices[index]].Image.CopyTo(images, index * CellImage.Values);
        return tensor(images, [indices.Length, CellImage.Planes, CellImage.Side, CellImage.Side]).to(float32) / 127.5f - 1;
    }

    /// <inheritdoc/>
    public Tensor Loss(ReadingNetwork network, ReadOnlySpan<int> indices)
    {
        var (kinds, lines, areTold) = (new long[indices.Length * Places], new float[indices.Length * Places], new float[indices.Length * Places]);
        for (var index = 0; index < indices.Length; index++)
        {
            var cell = Cells[indices[index]];
            for (var place = 0; place < Places; place++)
            {
                var at = index * Places + place;
                kinds[at] = cell.Kinds[place];
                (lines[at], areTold[at]) = cell.Lines[place] == CellSample.Untold ? (0, 0) : (cell.Lines[place], 1);
            }
        }

        long[] raster = [indices.Length, CellSample.Places, CellSample.Places];
        var sums = network.forward(Images(indices));
        return (nn.functional.cross_entropy(sums.slice(1, 0, CellSample.Classes, 1), tensor(kinds, raster), ignore_index: CellSample.Untold, reduction: nn.Reduction.Sum)
            + nn.functional.binary_cross_entropy_with_logits(sums.select(1, CellSample.Classes), tensor(lines, raster), tensor(areTold, raster), nn.Reduction.Sum))
            / indices.Length;
    }

    private static byte[] Bytes(CellInk ink)
    {
        var values = new float[CellImage.Values];
        CellImage.Draw(ink, values);
        return Array.ConvertAll(values, value => (byte)MathF.Round(127.5f * (value + 1)));
    }
}
