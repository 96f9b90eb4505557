namespace Companion.Sight.Reading;

/// <summary>
/// Settles which marks have a line through them by two witnesses that err in different places: comparing each mark with others of its
/// digit, and the network that sees it with all that stands around it. Where they do not agree somebody has to look.
/// </summary>
internal static class LineWitnesses
{
    // How likely a line is to the network where it has no doubt that there is none; and from where on it alone gives reason to look.
    private const float None = 0.02f, Suspect = 0.1f, SuspectOnPlainBoard = 0.5f;

    /// <summary>How likely a line is to the network where it has no doubt of it.</summary>
    public const float Certain = 0.98f;

    /// <summary>Settles it for all marks of a board.</summary>
    /// <param name="marks">The marks, compared with each other.</param>
    public static void Settle(IReadOnlyList<Sign> marks)
    {
        var certain = marks.Where(mark => mark.Around.Line >= Certain).ToList();
        var hasLines = certain.Count > 1 || certain.Exists(mark => mark.IsStruck);
        foreach (var mark in marks)
        {
            if (mark.Around.Odds.IsDefault || mark.Reading.Digit is null)
                continue;
            var (compared, line) = (mark.IsStruck, mark.Around.Line);
            // Where there are none for certain, what only one of them sees is rather something else.
            mark.IsStruck = hasLines ? line >= Certain || (compared && line >= None) : compared && line >= 0.5f;
            var agree = mark.IsStruck
                ? compared && line >= 0.5f
                : !compared && line < (hasLines ? Suspect : SuspectOnPlainBoard);
            if (!agree)
                mark.Reading = mark.Reading with { Certainty = Math.Min(mark.Reading.Certainty, Siblings.ByLikeness) };
        }
    }
}
