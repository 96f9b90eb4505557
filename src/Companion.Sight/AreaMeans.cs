namespace Companion.Sight;

/// <summary>Brings a plane to another size: each pixel of the image is the mean of the area of the plane that it stands for.</summary>
internal static class AreaMeans
{
    /// <summary>For each pixel of an image along one axis, the pixels of the plane that it is the mean of, and their parts.</summary>
    /// <param name="Count">How many pixels the plane has along the axis; what is beyond them is 0.</param>
    /// <param name="Areas">The first one, and the part of each.</param>
    internal readonly record struct Axis(int Count, (int First, float[] Parts)[] Areas);

    /// <summary>Divides an axis.</summary>
    /// <param name="count">How many pixels the plane has along it.</param>
    /// <param name="side">How many the image has.</param>
    /// <param name="middle">Where in the plane the middle of the image is.</param>
    /// <param name="step">How many pixels of the plane there are to one of the image.</param>
    public static Axis Along(int count, int side, float middle, float step)
    {
        var areas = new (int, float[])[side];
        // One pixel at least, so that what is small comes out smooth and not in squares.
        var window = Math.Max(step, 1);
        for (var index = 0; index < side; index++)
        {
            var start = middle + (index + 0.5f - side / 2f) * step - window / 2;
            var first = Math.Max(0, (int)MathF.Floor(start));
            var parts = new float[Math.Max(0, Math.Min(count, (int)MathF.Ceiling(start + window)) - first)];
            for (var part = 0; part < parts.Length; part++)
                parts[part] = Math.Max(0, Math.Min(first + part + 1, start + window) - Math.Max(first + part, start)) / window;
            areas[index] = (first, parts);
        }

        return new(count, areas);
    }

    /// <summary>Makes the image.</summary>
    /// <param name="plane">The plane, row by row.</param>
    /// <param name="across">Its columns.</param>
    /// <param name="down">Its rows.</param>
    /// <param name="image">Where it is put, row by row.</param>
    public static void Of(ReadOnlySpan<float> plane, Axis across, Axis down, Span<float> image)
    {
        image.Clear();
        var side = across.Areas.Length;
        for (var y = 0; y < down.Areas.Length; y++)
        {
            var target = image.Slice(y * side, side);
            for (var row = 0; row < down.Areas[y].Parts.Length; row++)
            {
                var source = plane.Slice((down.Areas[y].First + row) * across.Count, across.Count);
                var part = down.Areas[y].Parts[row];
                for (var x = 0; x < target.Length; x++)
                {
                    var sum = 0f;
                    var (first, parts) = across.Areas[x];
                    for (var column = 0; column < parts.Length; column++)
                        sum += parts[column] * source[first + column];
                    target[x] += part * sum;
                }
            }
        }
    }
}
