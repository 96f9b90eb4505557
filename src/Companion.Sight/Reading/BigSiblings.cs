namespace Companion.Sight.Reading;

/// <summary>
/// Compares the big digits of a board with each other: they are set in one face, or in two. A letter that is read as the digit it is like
/// is unlike the others of that digit, and a mark that was taken for one is lower.
/// </summary>
internal static class BigSiblings
{
    // So many others have to be like each other, as the cosine of their images tells, and how unlike them is something else.
    private const int FewestOthers = 3;
    private const float Alike = 0.9f, Unlike = 0.82f;

    // No digit is so much lower than others of its kind.
    private const float Lower = 0.8f;

    /// <summary>Doubts each that is unlike all others of its digit, where those are alike, or much lower than one of them.</summary>
    /// <param name="sure">What was surely read as big digits.</param>
    public static void Compare(IReadOnlyList<Sign> sure)
    {
        foreach (var group in sure.GroupBy(sign => sign.Reading.Digit))
        {
            Sign[] digits = [.. group];
            var high = digits.Max(digit => digit.Height);
            foreach (var low in digits.Where(digit => digit.Height < Lower * high))
                low.Reading = low.Reading with { Certainty = Siblings.Doubted };
            if (digits.Length <= FewestOthers)
                continue;
            foreach (var digit in digits)
            {
                var others = Array.FindAll(digits, other => other != digit);
                if (others.Max(other => Looks.Likeness(digit, other)) <= Unlike && AreAlike(others))
                    digit.Reading = digit.Reading with { Certainty = Siblings.Doubted };
            }
        }
    }

    private static bool AreAlike(Sign[] digits) =>
        Array.TrueForAll(digits, digit => Array.Exists(digits, other => other != digit && Looks.Likeness(digit, other) >= Alike));
}
