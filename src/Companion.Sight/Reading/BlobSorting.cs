namespace Companion.Sight.Reading;

/// <summary>What a blob may be, by its size and place alone.</summary>
internal enum BlobKind
{
    /// <summary>Nothing that stands in the cell: a rest of its lines, a frame, a ring around it, a crumb.</summary>
    Ignorable,

    /// <summary>It may be a digit.</summary>
    Glyph,

    /// <summary>
    /// It meets one edge of the cell: a digit so near to the line that its soft edge meets it, or a shape that comes in from the next cell,
    /// with or without a glyph on it.
    /// </summary>
    Edging,

    /// <summary>It reaches into the cell and is no glyph as a whole; a glyph may be part of it.</summary>
    Obstacle,
}

/// <summary>Sorts the blobs of a cell. All lengths are parts of the cell.</summary>
internal static class BlobSorting
{
    private const float Speck = 0.07f, Crumb = 0.04f;
    private const float LeastHeight = 0.075f, MostHeight = 0.95f, MostWidth = 0.85f;

    // Frames of a selection, broken lines around several cells and rests of the grid's lines stay within this margin.
    private const float Margin = 0.13f;
    private const float Dash = 0.12f;
    private const float Thin = 0.08f;
    private const int InLine = 2;
    private const float MostBent = 0.22f;
    private const float Frame = 0.7f;
    private const float Ring = 0.55f;

    /// <summary>What a blob may be.</summary>
    /// <param name="blob">The blob.</param>
    /// <param name="ink">Its cell.</param>
    public static BlobKind Of(Blob blob, CellInk ink)
    {
        var (width, height) = (blob.Width / ink.Box.CellWidth, blob.Height / ink.Box.CellHeight);
        if (Math.Max(blob.Width, blob.Height) <= 2 || Math.Max(width, height) < Speck)
            return BlobKind.Ignorable;
        var edges = (blob.Left == 0 ? 1 : 0) + (blob.Top == 0 ? 1 : 0) + (blob.Right == ink.Cell.Width ? 1 : 0) + (blob.Bottom == ink.Cell.Height ? 1 : 0);
        // What grows into the cell from one of its edges may be a mark of which the line leaves little.
        var isUpright = blob.Top == 0 || blob.Bottom == ink.Cell.Height;
        if (edges == 1 && (isUpright ? height : width) >= Dash && (isUpright ? width : height) < Speck + LeastHeight)
            return BlobKind.Edging;
        if (IsInMargin(blob, ink) && (edges > 0 || Math.Max(width, height) is < Dash or > Frame))
            return BlobKind.Ignorable;
        if (width >= Ring && height >= Ring && IsHollow(blob, ink.Cell.Width))
            return BlobKind.Ignorable;
        if (edges > 1 || height > MostHeight || width > MostWidth)
            return BlobKind.Obstacle;
        if (edges == 1)
            return BlobKind.Edging;
        return height < LeastHeight ? BlobKind.Ignorable : BlobKind.Glyph;
    }

    /// <summary>Whether what is no glyph by its size may be a piece of one: the bar of a 5 whose thin stem does not show.</summary>
    /// <param name="blob">The blob.</param>
    /// <param name="ink">Its cell.</param>
    public static bool IsCrumb(Blob blob, CellInk ink) =>
        Math.Min(blob.Width, blob.Height) > 1 && Math.Max(blob.Width / ink.Box.CellWidth, blob.Height / ink.Box.CellHeight) is >= Crumb and < Speck + LeastHeight && !IsInMargin(blob, ink);

    /// <summary>Whether a blob is a dash of a broken line along the cell's edge: others are in line with it.</summary>
    /// <param name="blob">The blob.</param>
    /// <param name="all">All blobs of the cell.</param>
    /// <param name="ink">The cell.</param>
    public static bool IsDash(Blob blob, IReadOnlyList<Blob> all, CellInk ink)
    {
        var thin = Math.Max(2, Thin * ink.Box.CellHeight);
        if (!IsInMargin(blob, ink))
            return false;
        bool IsLine(Blob other, bool isUpright) => other != blob && (isUpright ? other.Width : other.Height) <= thin && IsInMargin(other, ink);
        bool IsUprightBy(Blob other) => IsLine(other, isUpright: true) && Math.Min(Math.Abs(other.Left - blob.Left), Math.Abs(other.Right - blob.Right)) <= InLine;
        bool IsLevelBy(Blob other) => IsLine(other, isUpright: false) && Math.Min(Math.Abs(other.Top - blob.Top), Math.Abs(other.Bottom - blob.Bottom)) <= InLine;
        // The dash at a corner has others in line with it both ways.
        if (Math.Min(blob.Width, blob.Height) > thin)
            return Math.Max(blob.Width, blob.Height) <= MostBent * ink.Box.CellHeight && all.Any(IsUprightBy) && all.Any(IsLevelBy);
        return blob.Width < blob.Height ? all.Any(IsUprightBy) : all.Any(IsLevelBy);
    }

    private static bool IsInMargin(Blob blob, CellInk ink)
    {
        var (x, y) = (Margin * ink.Box.CellWidth, Margin * ink.Box.CellHeight);
        var (left, top) = (ink.Box.X + x - ink.Box.Left, ink.Box.Y + y - ink.Box.Top);
        var (right, bottom) = (left + ink.Box.CellWidth - 2 * x, top + ink.Box.CellHeight - 2 * y);
        foreach (var pixel in blob.Pixels)
        {
            var (column, row) = (pixel % ink.Cell.Width + 0.5f, pixel / ink.Cell.Width + 0.5f);
            if (column > left && column < right && row > top && row < bottom)
                return false;
        }

        return true;
    }

    // Rings and frames follow their box or the ellipse in it, and nothing hangs on them.
    private static bool IsHollow(Blob blob, int width)
    {
        const float MostAstray = 0.01f;
        var stroke = Math.Max(0.07f, 5f / Math.Min(blob.Width, blob.Height));
        var (x, y) = ((blob.Left + blob.Right) / 2f, (blob.Top + blob.Bottom) / 2f);
        var (offBox, offEllipse) = (0, 0);
        foreach (var pixel in blob.Pixels)
        {
            var (u, v) = ((pixel % width + 0.5f - x) / (blob.Width / 2f), (pixel / width + 0.5f - y) / (blob.Height / 2f));
            offBox += Math.Max(Math.Abs(u), Math.Abs(v)) < 1 - stroke ? 1 : 0;
            offEllipse += MathF.Abs(MathF.Sqrt(u * u + v * v) - 1) > stroke ? 1 : 0;
        }

        return Math.Min(offBox, offEllipse) <= MostAstray * blob.Pixels.Count;
    }
}
