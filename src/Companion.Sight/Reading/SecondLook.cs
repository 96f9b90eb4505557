namespace Companion.Sight.Reading;

/// <summary>Other ways to see a sign that was not surely read: several digits that touch, a part of one, a digit on a shape.</summary>
internal static class SecondLook
{
    // Parts of the sign's darkest ink at which what touches comes apart.
    private static readonly float[] _splits = [0.45f, 0.65f];

    // Pieces of one digit stand this close, as a part of the cell.
    private const float PieceGap = 0.09f;

    // A digit is not wider than this part of its height, in most faces; wider ink is looked at as several.
    private const float Wide = 0.95f;
    private const int MostAbreast = 5;

    // What is higher than this part of its width may be several, one below the other.
    private const float High = 1.9f;
    private const int MostStacked = 3;

    /// <summary>The other ways, each a list of digits.</summary>
    /// <param name="sign">The sign.</param>
    /// <param name="cell">Its cell.</param>
    public static IEnumerable<List<Sign>> Ways(Sign sign, CellSketch cell)
    {
        var (blob, ink) = (sign.Blob, sign.Ink);
        foreach (var split in _splits)
        {
            var parts = Blobs.Within(ink, blob, split * blob.Peak).FindAll(part => BlobSorting.Of(part, ink) is BlobKind.Glyph or BlobKind.Edging);
            if (parts.Count > 0)
                yield return parts.ConvertAll(part => new Sign(part, ink));
        }

        if (blob.Width > Wide * blob.Height)
        {
            for (var abreast = 2; abreast <= MostAbreast && abreast * blob.Height < 3 * blob.Width; abreast++)
                yield return Abreast(blob, ink, abreast).ConvertAll(part => new Sign(part, ink));
        }

        if (blob.Height > High * blob.Width)
        {
            for (var stacked = 2; stacked <= MostStacked; stacked++)
                yield return Stacked(blob, ink, stacked).ConvertAll(part => new Sign(part, ink));
        }

        bool IsPiece(Blob other) => other != blob && other.Gap(blob) <= PieceGap * ink.Box.CellHeight;
        var pieces = cell.Signs.Where(other => !other.IsSure).Select(other => other.Blob).Where(IsPiece).ToList();
        if (pieces.Count > 0)
            yield return [new(Blob.Union([blob, .. pieces]), ink)];
        var crumbs = cell.Crumbs.Where(IsPiece).ToList();
        if (crumbs.Count > 0)
            yield return [new(Blob.Union([blob, .. crumbs]), ink)];
    }

    // Cut where a column has the least ink, near where even widths would end.
    private static List<Blob> Abreast(Blob blob, CellInk ink, int count) => Parts(blob, ink, count, blob.Width, pixel => pixel % ink.Cell.Width - blob.Left);

    // The same with rows.
    private static List<Blob> Stacked(Blob blob, CellInk ink, int count) => Parts(blob, ink, count, blob.Height, pixel => pixel / ink.Cell.Width - blob.Top);

    private static List<Blob> Parts(Blob blob, CellInk ink, int count, int length, Func<int, int> along)
    {
        var inks = new float[length];
        foreach (var pixel in blob.Pixels)
            inks[along(pixel)] += ink.Distance[pixel];
        var cuts = new List<int> { 0 };
        for (var cut = 1; cut < count; cut++)
        {
            var (even, reach) = (cut * length / count, Math.Max(1, length / count / 3));
            var from = Math.Max(cuts[^1] + 1, even - reach);
            var best = Math.Min(from, length - 1);
            for (var at = from; at <= Math.Min(length - 1, even + reach); at++)
                best = inks[at] < inks[best] ? at : best;
            cuts.Add(best);
        }

        cuts.Add(length);
        return [.. cuts.Zip(cuts.Skip(1), (from, to) => blob.Pixels.Where(pixel => along(pixel) >= from && along(pixel) < to).ToList())
            .Where(pixels => pixels.Count > 0).Select(pixels => Blob.Of(pixels, ink))];
    }
}
