using Companion.Engine;

namespace Companion.Sight.Reading;

/// <summary>
/// Finds digits in whole cells with a small network, which <c>tests/Companion.Sight.Training</c> makes. May be used by several threads at once.
/// </summary>
internal sealed class CellReader : IDisposable
{
    // Columns and rows of the places at which it says what is there, and for each nothing, nine marks, nine big digits, and a line.
    private const int Places = 16, Raster = Places * Places, Classes = 2 + 2 * Digit.Count;

    // What is less likely is not there.
    private const float Least = 0.15f;

    // Two different digits stand as close as the next place only where both are so likely.
    private const float Convincing = 0.7f;

    private static readonly Lazy<CellReader> _standard = new(() => new(StoredNetwork.Brought("cells.onnx")));

    private readonly StoredNetwork _network;

    /// <summary>Makes a reader.</summary>
    /// <param name="network">An ONNX model from <c>ink</c>, cells by planes by rows by columns, to <c>certainty</c>, cells by classes by places.</param>
    public CellReader(byte[] network) => _network = new(network);

    /// <summary>The reader with the network that the companion brings along. It is loaded when first asked for, and for all.</summary>
    public static CellReader Standard => _standard.Value;

    /// <summary>Finds what stands in cells, in their order.</summary>
    /// <param name="cells">The cells.</param>
    public IReadOnlyList<IReadOnlyList<CellFinding>> Read(IReadOnlyList<CellInk> cells)
    {
        var images = new float[cells.Count * CellImage.Values];
        for (var index = 0; index < cells.Count; index++)
            CellImage.Draw(cells[index], images.AsSpan(index * CellImage.Values, CellImage.Values));
        return cells.Count == 0 ? [] : Read(images, cells.Count);
    }

    /// <summary>Finds what stands in images of cells, in their order.</summary>
    /// <param name="images">The images, one after the other, as <see cref="CellImage"/> draws them.</param>
    /// <param name="count">How many.</param>
    public IReadOnlyList<CellFinding>[] Read(float[] images, int count) => _network.Read(images, [count, CellImage.Planes, CellImage.Side, CellImage.Side], certainties =>
    {
        var found = new IReadOnlyList<CellFinding>[count];
        for (var index = 0; index < count; index++)
            found[index] = Findings(certainties.Slice(index * Classes * Raster, Classes * Raster));
        return found;
    });

    private static List<CellFinding> Findings(ReadOnlySpan<float> certainties)
    {
        var all = new List<(int Place, int Class, float Likely)>();
        for (var kind = 1; kind < Classes - 1; kind++)
        {
            for (var place = 0; place < Raster; place++)
            {
                if (certainties[kind * Raster + place] >= Least)
                    all.Add((place, kind, certainties[kind * Raster + place]));
            }
        }

        var (found, taken) = (new List<CellFinding>(), new List<(int Place, int Class, float Likely)>());
        foreach (var one in all.OrderByDescending(one => one.Likely))
        {
            if (taken.Exists(other => Stands(one, other)))
                continue;
            taken.Add(one);
            var isBig = one.Class > Digit.Count;
            var odds = new float[Digit.Count];
            for (var digit = 0; digit < odds.Length; digit++)
                odds[digit] = certainties[(1 + digit + (isBig ? Digit.Count : 0)) * Raster + one.Place];
            const float Step = CellImage.Side / (float)Places;
            found.Add(new(
                [.. odds], isBig, CellImage.InCell((one.Place % Places + 0.5f) * Step), CellImage.InCell((one.Place / Places + 0.5f) * Step),
                certainties[(Classes - 1) * Raster + one.Place]));
        }

        return found;
    }

    // Whether one is the same as another, or in its place.
    private static bool Stands((int Place, int Class, float Likely) one, (int Place, int Class, float Likely) other)
    {
        var away = Math.Max(Math.Abs(one.Place % Places - other.Place % Places), Math.Abs(one.Place / Places - other.Place / Places));
        var isBig = one.Class > Digit.Count || other.Class > Digit.Count;
        return away <= (isBig ? 2 : 1) && (away == 0 || one.Class == other.Class || Math.Min(one.Likely, other.Likely) < Convincing);
    }

    /// <inheritdoc/>
    public void Dispose() => _network.Dispose();
}
