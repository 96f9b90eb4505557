namespace Companion.Sight.Reading;

/// <summary>Ink that hangs together, in a cell.</summary>
/// <param name="Pixels">Its pixels, row by row through the cell.</param>
/// <param name="Left">Its first column.</param>
/// <param name="Top">Its first row.</param>
/// <param name="Right">The column after its last one.</param>
/// <param name="Bottom">The row after its last one.</param>
/// <param name="Peak">Its greatest distance from the ground.</param>
internal sealed record Blob(IReadOnlyList<int> Pixels, int Left, int Top, int Right, int Bottom, float Peak)
{
    /// <summary>Columns.</summary>
    public int Width => Right - Left;

    /// <summary>Rows.</summary>
    public int Height => Bottom - Top;

    /// <summary>Some pixels of a cell.</summary>
    /// <param name="pixels">At least one.</param>
    /// <param name="ink">The cell.</param>
    public static Blob Of(IReadOnlyList<int> pixels, CellInk ink)
    {
        var width = ink.Cell.Width;
        return new(
            pixels, pixels.Min(pixel => pixel % width), pixels.Min(pixel => pixel / width), pixels.Max(pixel => pixel % width) + 1,
            pixels.Max(pixel => pixel / width) + 1, pixels.Max(pixel => ink.Distance[pixel]));
    }

    /// <summary>Several as one.</summary>
    /// <param name="blobs">At least one.</param>
    public static Blob Union(IReadOnlyList<Blob> blobs) => new(
        [.. blobs.SelectMany(blob => blob.Pixels)],
        blobs.Min(blob => blob.Left), blobs.Min(blob => blob.Top), blobs.Max(blob => blob.Right), blobs.Max(blob => blob.Bottom), blobs.Max(blob => blob.Peak));

    /// <summary>The gap between two in pixels; 0 where their boxes touch or overlap.</summary>
    /// <param name="other">The other one.</param>
    public int Gap(Blob other) => Math.Max(
        Math.Max(0, Math.Max(other.Left - Right, Left - other.Right)),
        Math.Max(0, Math.Max(other.Top - Bottom, Top - other.Bottom)));

    /// <summary>The longest level run of its pixels.</summary>
    /// <param name="width">Columns of the cell.</param>
    public int LongestRun(int width)
    {
        var (longest, run, previous) = (0, 0, -2);
        foreach (var pixel in Pixels.Order())
        {
            run = pixel == previous + 1 && pixel % width > 0 ? run + 1 : 1;
            (longest, previous) = (Math.Max(longest, run), pixel);
        }

        return longest;
    }

    /// <summary>What stays of it without parts of it and their soft edges.</summary>
    /// <param name="parts">The parts.</param>
    /// <param name="ink">The cell.</param>
    public Blob Without(IEnumerable<Blob> parts, CellInk ink)
    {
        const int Soft = 2;
        const float Usual = 0.9f;
        var width = ink.Cell.Width;
        var taken = new HashSet<int>();
        foreach (var pixel in parts.SelectMany(part => part.Pixels))
        {
            for (var dy = -Soft; dy <= Soft; dy++)
            {
                for (var dx = -Soft; dx <= Soft; dx++)
                    taken.Add(pixel + dy * width + dx);
            }
        }

        var left = Pixels.Where(pixel => !taken.Contains(pixel)).ToList();
        if (left.Count == 0)
            return this with { Pixels = left, Right = Left, Bottom = Top, Peak = 0 };
        float[] distances = [.. left.Select(pixel => ink.Distance[pixel]).Order()];
        return new(
            left, left.Min(pixel => pixel % width), left.Min(pixel => pixel / width), left.Max(pixel => pixel % width) + 1,
            left.Max(pixel => pixel / width) + 1, distances[(int)(Usual * (distances.Length - 1))]);
    }
}
