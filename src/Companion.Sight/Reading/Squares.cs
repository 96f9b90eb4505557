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
        // The largest full square whose lower right corner each pixel of a row is, by the three before it.
        var (above, largest) = (new int[width], new int[width]);
        bool[]? covered = null;
        for (var start = 0; start < isSet.Length; start += width)
        {
            for (var x = 0; x < width; x++)
            {
                largest[x] = !isSet[start + x] ? 0 : x == 0 ? 1 : 1 + Math.Min(largest[x - 1], Math.Min(above[x], above[x - 1]));
                if (largest[x] < side)
                    continue;
                covered ??= new bool[isSet.Length];
                for (var row = 0; row < side; row++)
                    covered.AsSpan(start - row * width + x - side + 1, side).Fill(true);
            }

            (above, largest) = (largest, above);
        }

        return covered;
    }
}
