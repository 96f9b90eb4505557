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

    // So many digits that share their cells with others tell where marks stand and how high they are, but for a part of them that may be
    // something else.
    private const int FewestAbreast = 8;
    private const float Astray = 0.1f;

    // Where hardly any mark stands in the middle of its cell, so much farther off it, what stands there alone and higher is big.
    private const float OffMiddle = 0.15f, Seldom = 0.2f, HigherAlone = 1.05f;

    /// <summary>From which height on a digit is big.</summary>
    /// <param name="sure">What was surely read as digits.</param>
    public static float Threshold(IEnumerable<Sign> sure)
    {
        // A line through a mark makes it higher.
        Sign[] sorted = [.. sure.Where(sign => !sign.MayBeStruck).OrderBy(sign => sign.Height)];
        var cells = sorted.CountBy(sign => sign.Ink).ToDictionary();
        Sign[] marks = [.. sorted.Where(sign => cells[sign.Ink] > 1)];
        if (marks.Length < FewestAbreast)
            return Threshold(sorted, 0);

        var (usual, highest) = (marks[(int)((1 - Astray) * (marks.Length - 1))].Height, marks[^1].Height);
        var alone = marks.Count(IsMiddle) <= Seldom * marks.Length
            ? Array.Find(sorted, sign => sign.Height > HigherAlone * highest && cells[sign.Ink] == 1 && IsMiddle(sign))
            : null;
        if (alone is null)
            return Borders(sorted, highest, 0).FirstOrDefault().Middle is > 0 and var first ? first : Threshold(sorted, usual);
        return MathF.Sqrt(alone.Height * highest);
    }

    private static float Threshold(Sign[] sorted, float above)
    {
        if (Borders(sorted, above, Lowest).DefaultIfEmpty().MaxBy(border => border.Gap).Middle is > 0 and var widest)
            return widest;
        return sorted.Length > 0 && sorted[sorted.Length / 2].Height >= Usual ? Lowest : MarksBelow;
    }

    // The middles of the gaps above a height, and how wide they are. Where the height is that of marks, big digits may be low too.
    private static IEnumerable<(float Middle, float Gap)> Borders(Sign[] sorted, float from, float lowest)
    {
        for (var index = 1; index < sorted.Length; index++)
        {
            var (below, above) = (sorted[index - 1].Height, sorted[index].Height);
            var middle = MathF.Sqrt(below * above);
            if (below >= from && above / below > Gap && middle > lowest && middle < Highest && !IsOldStyle(sorted, index))
                yield return (middle, above / below);
        }
    }

    private static bool IsMiddle(Sign sign) => Math.Max(Math.Abs(sign.X - 0.5f), Math.Abs(sign.Y - 0.5f)) <= OffMiddle;

    // Old-style figures have 1 and 2 as low as small letters, and the others higher.
    private static bool IsOldStyle(Sign[] sorted, int index) =>
        Array.TrueForAll(sorted[..index], IsLow) && !Array.Exists(sorted[index..], IsLow);

    private static bool IsLow(Sign sign) => sign.Reading.Digit is { Value: 1 or 2 };
}
