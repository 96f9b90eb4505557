using System.Collections.Immutable;

namespace Companion.Session.Chapters;

/// <summary>
/// What video sites ask of a list of chapters in a description, else the whole list is ignored: the first at 0:00, at least three, in order,
/// none shorter than ten seconds. Common practice, as the sites' help pages have it.
/// </summary>
public static class ChapterRules
{
    /// <summary>The fewest chapters.</summary>
    public const int Fewest = 3;

    /// <summary>The longest title that is kept, in characters.</summary>
    public const int LongestTitle = 100;

    /// <summary>The shortest chapter.</summary>
    public static TimeSpan Shortest { get; } = TimeSpan.FromSeconds(10);

    /// <summary>What a list breaks, each in one plain sentence; empty where it breaks nothing.</summary>
    /// <param name="chapters">The chapters, by their times in the video.</param>
    /// <param name="length">How long the video is.</param>
    public static ImmutableArray<string> Broken(ImmutableArray<ChapterMark> chapters, TimeSpan length)
    {
        var broken = ImmutableArray.CreateBuilder<string>();
        if (chapters.Length < Fewest)
            broken.Add($"There are fewer than {Fewest} chapters: video sites ignore such a list.");
        if (chapters.IsEmpty || Seconds(chapters[0].At) != 0)
            broken.Add("The first chapter does not begin at 0:00: video sites ignore such a list.");
        ImmutableArray<TimeSpan> ends = [.. chapters.Skip(1).Select(chapter => chapter.At), length];
        for (var index = 0; index < chapters.Length; index++)
        {
            if (Seconds(ends[index]) - Seconds(chapters[index].At) < Shortest.TotalSeconds)
                broken.Add($"Chapter {index + 1}, {chapters[index].Title}, is shorter than {Shortest.TotalSeconds} seconds: merge it with another.");
        }

        return broken.ToImmutable();
    }

    /// <summary>A time as a list of chapters has it: whole seconds, cut and not rounded.</summary>
    /// <param name="at">The time.</param>
    public static long Seconds(TimeSpan at) => (long)Math.Floor(at.TotalSeconds);
}
