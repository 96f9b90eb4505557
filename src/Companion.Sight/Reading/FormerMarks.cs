namespace Companion.Sight.Reading;

/// <summary>
/// The marks of a cell as they were at earlier looks, each without a line through it: what goes through one now was drawn since.
/// </summary>
internal sealed class FormerMarks
{
    // How far a mark and the same mark with a line through it may be apart, as a part of the cell.
    private const float Near = 0.08f;

    private readonly Sign[] _marks;

    private FormerMarks(Sign[] marks) => _marks = marks;

    /// <summary>Of a cell that is seen for the first time.</summary>
    public static FormerMarks None { get; } = new([]);

    /// <summary>Of a cell that is seen again.</summary>
    /// <param name="last">The cell as it was at the last look.</param>
    public static FormerMarks Of(CellSketch last)
    {
        var plain = last.Signs.Where(sign => sign.IsSure && !sign.IsStruck);
        // Under what is struck, or cannot be read, is still what was there before.
        var under = last.Before._marks.Where(mark => last.Signs.Exists(sign => !(sign.IsSure && !sign.IsStruck) && IsNear(sign, mark)));
        return new([.. plain, .. under]);
    }

    /// <summary>Whether a mark was there before without a line through it.</summary>
    /// <param name="mark">The mark as it is now.</param>
    public bool WasPlain(Sign mark) => Array.Exists(_marks, former => former.Alone.Reading.Digit == mark.Reading.Digit && IsNear(mark, former));

    private static bool IsNear(Sign one, Sign other) => Math.Max(Math.Abs(one.X - other.X), Math.Abs(one.Y - other.Y)) <= Near;
}
