namespace Companion.Sight.Reading;

/// <summary>Gathers ink that hangs together, corners included.</summary>
internal static class Blobs
{
    /// <summary>All of a cell.</summary>
    /// <param name="ink">The cell's ink.</param>
    /// <param name="threshold">What a pixel must be farther from the ground than.</param>
    public static List<Blob> Of(CellInk ink, float threshold)
    {
        var isTaken = new bool[ink.Distance.Length];
        var blobs = new List<Blob>();
        for (var pixel = Above.Next(ink.Distance, 0, threshold); pixel < isTaken.Length; pixel = Above.Next(ink.Distance, pixel + 1, threshold))
        {
            if (!isTaken[pixel])
                blobs.Add(Gather(ink, pixel, threshold, isTaken));
        }

        return blobs;
    }

    /// <summary>What a blob falls into at a higher threshold.</summary>
    /// <param name="ink">The cell's ink.</param>
    /// <param name="blob">The blob.</param>
    /// <param name="threshold">What a pixel must be farther from the ground than.</param>
    public static List<Blob> Within(CellInk ink, Blob blob, float threshold)
    {
        var isTaken = new bool[ink.Distance.Length];
        Array.Fill(isTaken, true);
        foreach (var pixel in blob.Pixels)
            isTaken[pixel] = false;
        var blobs = new List<Blob>();
        foreach (var pixel in blob.Pixels)
        {
            if (!isTaken[pixel] && ink.Distance[pixel] > threshold)
                blobs.Add(Gather(ink, pixel, threshold, isTaken));
        }

        return blobs;
    }

    private static Blob Gather(CellInk ink, int start, float threshold, bool[] isTaken)
    {
        var (width, height) = (ink.Cell.Width, ink.Cell.Height);
        var pixels = new List<int>();
        var (left, top, right, bottom, peak) = (width, height, 0, 0, 0f);
        var open = new Stack<int>();
        isTaken[start] = true;
        open.Push(start);
        while (open.TryPop(out var pixel))
        {
            pixels.Add(pixel);
            var (x, y) = (pixel % width, pixel / width);
            (left, top, right, bottom) = (Math.Min(left, x), Math.Min(top, y), Math.Max(right, x + 1), Math.Max(bottom, y + 1));
            peak = Math.Max(peak, ink.Distance[pixel]);
            for (var ny = Math.Max(0, y - 1); ny <= Math.Min(height - 1, y + 1); ny++)
            {
                for (var nx = Math.Max(0, x - 1); nx <= Math.Min(width - 1, x + 1); nx++)
                {
                    var next = ny * width + nx;
                    if (isTaken[next] || ink.Distance[next] <= threshold)
                        continue;
                    isTaken[next] = true;
                    open.Push(next);
                }
            }
        }

        return new(pixels, left, top, right, bottom, peak);
    }
}
