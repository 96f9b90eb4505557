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

        bool IsPiece(Blob other) => other != blob && other.Gap(blob) <= PieceGap * ink.Box.CellHeight;
        var pieces = cell.Signs.Where(other => !other.IsSure).Select(other => other.Blob).Where(IsPiece).ToList();
        if (pieces.Count > 0)
            yield return [new(Blob.Union([blob, .. pieces]), ink)];
        var crumbs = cell.Crumbs.Where(IsPiece).ToList();
        if (crumbs.Count > 0)
            yield return [new(Blob.Union([blob, .. crumbs]), ink)];
    }

    // Cut where a column has the least ink, near where even widths would end.
    private static List<Blob> Abreast(Blob blob, CellInk ink, int count)
    {
        var columns = new float[blob.Width];
        foreach (var pixel in blob.Pixels)
            columns[pixel % ink.Cell.Width - blob.Left] += ink.Distance[pixel];
        var cuts = new List<int> { 0 };
        for (var cut = 1; cut < count; cut++)
        {
            var (even, reach) = (cut * blob.Width / count, Math.Max(1, blob.Width / count / 3));
            var from = Math.Max(cuts[^1] + 1, even - reach);
            var best = Math.Min(from, blob.Width - 1);
            for (var column = from; column <= Math.Min(blob.Width - 1, even + reach); column++)
                best = columns[column] < columns[best] ? column : best;
            cuts.Add(best);
        }

        cuts.Add(blob.Width);
        var parts = new List<Blob>();
        for (var part = 0; part < count; part++)
        {
            var pixels = blob.Pixels.Where(pixel => pixel % ink.Cell.Width - blob.Left >= cuts[part] && pixel % ink.Cell.Width - blob.Left < cuts[part + 1]).ToList();
            if (pixels.Count > 0)
            {
                parts.Add(new(
                    pixels, blob.Left + cuts[part], pixels.Min(pixel => pixel / ink.Cell.Width), blob.Left + cuts[part + 1],
                    pixels.Max(pixel => pixel / ink.Cell.Width) + 1, pixels.Max(pixel => ink.Distance[pixel])));
            }
        }

        return parts;
    }
}
