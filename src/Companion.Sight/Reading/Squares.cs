namespace Companion.Sight.Reading;

/// <summary>Finds what is wide: pixels within full squares.</summary>
internal static class Squares
{
    /// <summary>The pixels of a plane that some full square covers.</summary>
    /// <param name="isSet">The plane, row by row.</param>
    /// <param name="width">Columns.</param>
    /// <param name="side">The squares' side, in pixels.</param>
    /// <returns>For each pixel whether one covers it; null where there is no square.</returns>
    public static bool[]? Covered(bool[] isSet, int width, int side)
    {
        // The largest full square whose lower right corner each pixel is, by the three before it.
        var largest = new int[isSet.Length];
        bool[]? covered = null;
        for (var pixel = 0; pixel < isSet.Length; pixel++)
        {
            if (!isSet[pixel])
                continue;
            var (x, y) = (pixel % width, pixel / width);
            largest[pixel] = x == 0 || y == 0
                ? 1
                : 1 + Math.Min(largest[pixel - 1], Math.Min(largest[pixel - width], largest[pixel - width - 1]));
            if (largest[pixel] < side)
                continue;
            covered ??= new bool[isSet.Length];
            for (var row = 0; row < side; row++)
                covered.AsSpan(pixel - row * width - side + 1, side).Fill(true);
        }

        return covered;
    }
}
