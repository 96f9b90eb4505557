namespace Companion.Sight.Reading;

/// <summary>Tells big digits from small marks by their heights over the whole board.</summary>
internal static class Heights
{
    // Parts of the cell between which the border lies: three marks stand above each other, and a big digit fills its cell.
    private const float Lowest = 0.2f, Highest = 0.48f;

    // Where all digits of a board are of one kind, that is what they are by.
    private const float Usual = 0.3f, MarksBelow = 0.36f;

    // The heights of one kind differ by less than this from one to the next.
    private const float Gap = 1.2f;

    /// <summary>From which height on a digit is big.</summary>
    /// <param name="sure">What was surely read as digits.</param>
    public static float Threshold(IEnumerable<Sign> sure)
    {
        Sign[] sorted = [.. sure.OrderBy(sign => sign.Height)];
        var (best, widest) = (0f, Gap);
        for (var index = 1; index < sorted.Length; index++)
        {
            var (below, above) = (sorted[index - 1].Height, sorted[index].Height);
            var middle = MathF.Sqrt(below * above);
            if (above / below > widest && middle is > Lowest and < Highest && !IsOldStyle(sorted, index))
                (best, widest) = (middle, above / below);
        }

        if (best > 0)
            return best;
        return sorted.Length > 0 && sorted[sorted.Length / 2].Height >= Usual ? Lowest : MarksBelow;
    }

    // Old-style figures have 1 and 2 as low as small letters, and the others higher.
    private static bool IsOldStyle(Sign[] sorted, int index) =>
        Array.TrueForAll(sorted[..index], IsLow) && !Array.Exists(sorted[index..], IsLow);

    private static bool IsLow(Sign sign) => sign.Reading.Digit is { Value: 1 or 2 };
}
