using SkiaSharp;

namespace Companion.Browser.Tests.Stills;

/// <summary>
/// Whether two transparent pictures show the same shapes at the same places. Two painters never round alike: along an edge a pixel may
/// be covered a little more in one of them, or the edge may fall on its neighbour. So a pixel is <em>alike</em> if, within a pixel's
/// reach, the other picture has its colour; <em>stray</em> if not, seen from either side. What is missing or has moved by 3 pixels leaves
/// strays wherever an edge of it was or is; rounding leaves a few, scattered ones.
/// </summary>
internal sealed class Likeness
{
    /// <summary>
    /// Least difference in a channel, 0 to 255, at which colours differ. A pixel that an edge cuts has any mixture of the colours on its
    /// two sides; less than half of the way from black to white tells which of them it is nearer to.
    /// </summary>
    private const int Apart = 112;

    /// <summary>Side of the windows in which strays are counted: the width of the smallest shape, a candidate's plate, on a small board.</summary>
    private const int Window = 16;

    private Likeness(int strays, int painted, int crowd, SKPointI where) =>
        (Strays, Painted, Crowd, Where) = (strays, painted, crowd, where);

    /// <summary>How many pixels are stray.</summary>
    public int Strays { get; }

    /// <summary>How many pixels are painted in either picture.</summary>
    public int Painted { get; }

    /// <summary>The most strays in one window of 16 by 16 pixels.</summary>
    public int Crowd { get; }

    /// <summary>The top left corner of that window.</summary>
    public SKPointI Where { get; }

    /// <summary>
    /// Scattered strays are rounding; a crowd of them, or many, are a shape. Measured on all pictures of the tests: no stray at all
    /// between the two painters, and a crowd of at least 35 where one shape is missing or 3 pixels away at 1280 by 720.
    /// </summary>
    public bool IsSame => Crowd <= 8 && Strays <= Painted / 1000;

    /// <inheritdoc/>
    public override string ToString() => $"{Strays} of {Painted} pixels are stray, {Crowd} of them near {Where.X}, {Where.Y}";

    /// <summary>Compares two pictures of the same size.</summary>
    /// <param name="one">One.</param>
    /// <param name="other">The other.</param>
    /// <param name="except">Where they may differ.</param>
    public static Likeness Of(SKBitmap one, SKBitmap other, SKRectI except)
    {
        Assert.Equal((one.Width, one.Height), (other.Width, other.Height));
        var (width, height) = (one.Width, one.Height);
        var (left, right) = (Premultiplied(one), Premultiplied(other));
        var crowds = new int[(width + Window - 1) / Window, (height + Window - 1) / Window];
        var (strays, painted) = (0, 0);
        for (var y = 0; y < height; y++)
        {
            for (var x = 0; x < width; x++)
            {
                painted += left[y * width + x].Alpha > 0 || right[y * width + x].Alpha > 0 ? 1 : 0;
                if (except.Contains(x, y)
                    || (HasNear(left[y * width + x], right, x, y, width, height) && HasNear(right[y * width + x], left, x, y, width, height)))
                {
                    continue;
                }

                strays++;
                crowds[x / Window, y / Window]++;
            }
        }

        var crowd = crowds.Cast<int>().Max();
        var at = Enumerable.Range(0, crowds.Length).First(index => crowds[index / crowds.GetLength(1), index % crowds.GetLength(1)] == crowd);
        return new(strays, painted, crowd, new(at / crowds.GetLength(1) * Window, at % crowds.GetLength(1) * Window));
    }

    private static bool HasNear(SKColor colour, SKColor[] picture, int x, int y, int width, int height)
    {
        for (var row = Math.Max(0, y - 1); row <= Math.Min(height - 1, y + 1); row++)
        {
            for (var column = Math.Max(0, x - 1); column <= Math.Min(width - 1, x + 1); column++)
            {
                if (AreAlike(colour, picture[row * width + column]))
                    return true;
            }
        }

        return false;
    }

    private static bool AreAlike(SKColor one, SKColor other) =>
        Math.Abs(one.Red - other.Red) < Apart && Math.Abs(one.Green - other.Green) < Apart
        && Math.Abs(one.Blue - other.Blue) < Apart && Math.Abs(one.Alpha - other.Alpha) < Apart;

    // What is hardly there has hardly a colour.
    private static SKColor[] Premultiplied(SKBitmap bitmap) => [.. bitmap.Pixels.Select(pixel => new SKColor(
        (byte)(pixel.Red * pixel.Alpha / 255), (byte)(pixel.Green * pixel.Alpha / 255), (byte)(pixel.Blue * pixel.Alpha / 255), pixel.Alpha))];
}
