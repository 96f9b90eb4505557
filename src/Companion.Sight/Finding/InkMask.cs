namespace Companion.Sight.Finding;

/// <summary>A small grey copy of a photograph, and which of its pixels are darker (or lighter) than what is around them.</summary>
internal sealed class InkMask
{
    private const int MostSide = 1000;
    private const int Step = 7;

    private InkMask(int width, int height, float scale, bool[] isInk) => (Width, Height, Scale, IsInk) = (width, height, scale, isInk);

    /// <summary>Columns.</summary>
    public int Width { get; }

    /// <summary>Rows.</summary>
    public int Height { get; }

    /// <summary>Pixels of the photograph to one of this.</summary>
    public float Scale { get; }

    /// <summary>Row by row.</summary>
    public bool[] IsInk { get; }

    /// <summary>Makes one for dark ink and one for light ink.</summary>
    /// <param name="photo">The photograph.</param>
    public static IEnumerable<InkMask> Of(Frame photo)
    {
        var scale = Math.Max(1, Math.Max(photo.Width, photo.Height) / (float)MostSide);
        var (width, height) = ((int)(photo.Width / scale), (int)(photo.Height / scale));
        var grey = Shrink(photo, width, height, scale);
        var sums = Sums(grey, width, height);
        var reach = Math.Max(6, Math.Min(width, height) / 40);
        foreach (var sign in (int[])[1, -1])
            yield return new(width, height, scale, Mask(grey, sums, width, height, reach, sign));
    }

    private static bool[] Mask(byte[] grey, long[] sums, int width, int height, int reach, int sign)
    {
        var isInk = new bool[grey.Length];
        for (var y = 0; y < height; y++)
        {
            for (var x = 0; x < width; x++)
            {
                var (left, top, right, bottom) = (Math.Max(0, x - reach), Math.Max(0, y - reach), Math.Min(width, x + reach + 1), Math.Min(height, y + reach + 1));
                var sum = sums[bottom * (width + 1) + right] - sums[top * (width + 1) + right] - sums[bottom * (width + 1) + left] + sums[top * (width + 1) + left];
                var mean = sum / (float)((right - left) * (bottom - top));
                isInk[y * width + x] = sign * (mean - grey[y * width + x]) > Step;
            }
        }

        return isInk;
    }

    private static byte[] Shrink(Frame photo, int width, int height, float scale)
    {
        var grey = new byte[width * height];
        for (var y = 0; y < height; y++)
        {
            var (top, bottom) = ((int)(y * scale), Math.Min(photo.Height, Math.Max((int)(y * scale) + 1, (int)((y + 1) * scale))));
            for (var x = 0; x < width; x++)
            {
                var (left, right) = ((int)(x * scale), Math.Min(photo.Width, Math.Max((int)(x * scale) + 1, (int)((x + 1) * scale))));
                var sum = 0;
                for (var row = top; row < bottom; row++)
                {
                    var pixels = photo.Pixels.Slice(4 * (row * photo.Width + left), 4 * (right - left));
                    for (var at = 0; at < pixels.Length; at += 4)
                        sum += (2 * pixels[at] + 5 * pixels[at + 1] + pixels[at + 2]) / 8; // roughly luma
                }

                grey[y * width + x] = (byte)(sum / ((bottom - top) * (right - left)));
            }
        }

        return grey;
    }

    private static long[] Sums(byte[] grey, int width, int height)
    {
        var sums = new long[(width + 1) * (height + 1)];
        for (var y = 0; y < height; y++)
        {
            var row = 0L;
            for (var x = 0; x < width; x++)
            {
                row += grey[y * width + x];
                sums[(y + 1) * (width + 1) + x + 1] = sums[y * (width + 1) + x + 1] + row;
            }
        }

        return sums;
    }
}
