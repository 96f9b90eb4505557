using System.Numerics;

namespace Companion.Sight.Reading;

/// <summary>Finds the few values of a plane that are not ground.</summary>
internal static class Above
{
    /// <summary>The first value above a threshold, several at once being passed over.</summary>
    /// <param name="values">The values.</param>
    /// <param name="from">Where to begin.</param>
    /// <param name="threshold">The threshold.</param>
    /// <returns>Its index; the number of values where there is none.</returns>
    public static int Next(ReadOnlySpan<float> values, int from, float threshold)
    {
        var all = new Vector<float>(threshold);
        while (from < values.Length && values[from] <= threshold)
        {
            from++;
            while (from + Vector<float>.Count <= values.Length && Vector.LessThanOrEqualAll(new(values[from..]), all))
                from += Vector<float>.Count;
        }

        return from;
    }
}
