namespace Companion.Sight.Reading;

/// <summary>
/// Marks that are wider than a digit can be beside others of their face: a line goes through them. Where all marks of a digit have one, they
/// are like each other, and no comparison tells.
/// </summary>
internal static class WideMarks
{
    // So many other digits have to be known, and so many times the width of the widest of them is too wide. Of most faces the widest digit
    // is less than a quarter wider than the next.
    private const int FewestOthers = 4;
    private const float TooWide = 1.35f;

    /// <summary>Doubts them.</summary>
    /// <param name="marks">The marks of a board.</param>
    public static void Doubt(IEnumerable<Sign> marks)
    {
        var plain = marks.Where(mark => mark.IsSure && !mark.IsStruck).ToList();
        var widths = plain.GroupBy(mark => mark.Reading.Digit!.Value).ToDictionary(group => group.Key, Median);
        foreach (var mark in plain)
        {
            int[] others = [.. widths.Where(width => width.Key != mark.Reading.Digit).Select(width => width.Value)];
            if (others.Length >= FewestOthers && mark.Blob.Width > TooWide * others.Max())
                mark.Reading = mark.Reading with { Certainty = Math.Min(mark.Reading.Certainty, Siblings.ByLikeness) };
        }
    }

    private static int Median(IEnumerable<Sign> marks)
    {
        int[] widths = [.. marks.Select(mark => mark.Blob.Width).Order()];
        return widths[widths.Length / 2];
    }
}
