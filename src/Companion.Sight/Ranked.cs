namespace Companion.Sight;

/// <summary>Finds the value that would stand at a place if all were sorted, without sorting them.</summary>
internal static class Ranked
{
    /// <summary>The value at a rank (Hoare's selection, 1961). The values are put into another order.</summary>
    /// <param name="values">The values.</param>
    /// <param name="rank">From 0, the least one.</param>
    public static float At(Span<float> values, int rank)
    {
        var (left, right) = (0, values.Length - 1);
        while (left < right)
        {
            var (pivot, low, high) = (values[(left + right) / 2], left, right);
            while (low <= high)
            {
                while (values[low] < pivot)
                    low++;
                while (values[high] > pivot)
                    high--;
                if (low > high)
                    break;
                (values[low], values[high]) = (values[high], values[low]);
                (low, high) = (low + 1, high - 1);
            }

            if (rank <= high)
                right = high;
            else if (rank >= low)
                left = low;
            else
                break;
        }

        return values[rank];
    }
}
