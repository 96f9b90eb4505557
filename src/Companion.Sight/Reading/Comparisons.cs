namespace Companion.Sight.Reading;

/// <summary>
/// What comparing the marks of a board came to, kept from look to look: where one cell changes, most marks are still the same. All of it
/// follows from the marks' ink alone.
/// </summary>
internal sealed class Comparisons
{
    /// <summary>Marks laid over others as they are.</summary>
    public Memo<(Sign Mark, Sign Other), Overlay> Over { get; } = new();

    /// <summary>Marks laid over looks, and whether a look had to be set anew.</summary>
    public Memo<(Sign Mark, Sign Look), (Overlay Over, bool IsReset)> Laid { get; } = new();

    /// <summary>Looks set at other heights, in pixels.</summary>
    public Memo<(Sign Look, int Height), InkPlane[]> Reset { get; } = new();

    /// <summary>Looks with the lines of a board.</summary>
    public Memo<(Sign Look, StruckShape Shape), StruckLook> Lined { get; } = new();

    /// <summary>Marks compared with looks and their lines, within a reach.</summary>
    public Memo<(Sign Mark, Sign Look, StruckShape Shape, float Reach), LineFinding> Found { get; } = new();

    /// <summary>The same with the looks as they would stand otherwise between the pixels.</summary>
    public Memo<(Sign Mark, Sign Look, StruckShape Shape), LineFinding> FoundBetween { get; } = new();

    /// <summary>Begins another look at the board.</summary>
    public void Next()
    {
        Over.Next();
        Laid.Next();
        Reset.Next();
        Lined.Next();
        Found.Next();
        FoundBetween.Next();
    }
}
