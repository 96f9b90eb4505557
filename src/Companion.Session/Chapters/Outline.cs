using System.Collections.Immutable;
using Companion.Session.Shows;

namespace Companion.Session.Chapters;

/// <summary>Makes chapters of topics: merged so that none is too short and that there are not too many. Pure.</summary>
public static class Outline
{
    // A viewer looks through so many and not through more. Common practice.
    private const int Most = 20;

    // Shorter ones are no help in finding a place.
    private static readonly TimeSpan Usual = TimeSpan.FromSeconds(30);

    /// <summary>The chapters of a show as its log tells them. Their times are as keyed; see <see cref="ChapterMark.At"/>.</summary>
    /// <param name="show">The show.</param>
    /// <param name="topics">Its topics, in order.</param>
    /// <param name="titleOf">The title of a topic.</param>
    public static ImmutableArray<ChapterMark> Of(StoredShow show, ImmutableArray<Topic> topics, Func<Topic, string> titleOf)
    {
        ArgumentNullException.ThrowIfNull(show);
        ArgumentNullException.ThrowIfNull(titleOf);
        var (zero, end) = (KeyedZero(show), show.KeyedLength);
        var chapters = Begin(topics, zero, end);
        Merge(chapters, end, ChapterRules.Shortest, 1);
        Merge(chapters, end, Usual, ChapterRules.Fewest);
        Merge(chapters, end, TimeSpan.MaxValue, Most);
        return [.. chapters.Select(chapter => new ChapterMark(chapter.At, Cut(titleOf(chapter.Topic))))];
    }

    /// <summary>Chapters by their times in the video: the offset added, in order, none before it, the first at its beginning.</summary>
    /// <param name="show">The show.</param>
    /// <param name="marks">The chapters by their times as keyed, in any order.</param>
    public static ImmutableArray<ChapterMark> InVideo(StoredShow show, IEnumerable<ChapterMark> marks)
    {
        ArgumentNullException.ThrowIfNull(show);
        var placed = new List<ChapterMark>();
        foreach (var mark in marks.Select(mark => mark with { At = mark.At + show.Offset }).OrderBy(mark => mark.At))
        {
            // Of those before the video begins the last is what it begins with.
            var at = mark.At > TimeSpan.Zero ? mark.At : TimeSpan.Zero;
            if (placed.Count > 0 && placed[^1].At == at)
                placed[^1] = mark with { At = at };
            else
                placed.Add(mark with { At = at });
        }

        if (placed.Count > 0)
            placed[0] = placed[0] with { At = TimeSpan.Zero };
        return [.. placed];
    }

    /// <summary>The same without those that are too short for a list that video sites take.</summary>
    /// <param name="chapters">The chapters by their times in the video, in order.</param>
    /// <param name="length">How long the video is.</param>
    public static ImmutableArray<ChapterMark> ForSites(ImmutableArray<ChapterMark> chapters, TimeSpan length)
    {
        var kept = new List<ChapterMark>();
        foreach (var chapter in chapters)
        {
            var isFar = kept.Count == 0 || ChapterRules.Seconds(chapter.At) - ChapterRules.Seconds(kept[^1].At) >= ChapterRules.Shortest.TotalSeconds;
            if (isFar && (kept.Count == 0 || ChapterRules.Seconds(length) - ChapterRules.Seconds(chapter.At) >= ChapterRules.Shortest.TotalSeconds))
                kept.Add(chapter);
        }

        return [.. kept];
    }

    private static TimeSpan KeyedZero(StoredShow show) => show.Offset < TimeSpan.Zero ? -show.Offset : TimeSpan.Zero;

    private static List<(TimeSpan At, Topic Topic)> Begin(ImmutableArray<Topic> topics, TimeSpan zero, TimeSpan end)
    {
        var chapters = new List<(TimeSpan At, Topic Topic)>();
        foreach (var topic in topics.Where(topic => topic.At < end || topic is Topic.Beginning))
        {
            var at = topic.At > zero ? topic.At : zero;
            if (chapters.Count > 0 && chapters[^1].At >= at)
                chapters[^1] = (chapters[^1].At, topic);
            else
                chapters.Add((at, topic));
        }

        return chapters;
    }

    // As long as one is shorter than that and there are more than enough, the shortest goes first.
    private static void Merge(List<(TimeSpan At, Topic Topic)> chapters, TimeSpan end, TimeSpan shortest, int enough)
    {
        while (chapters.Count > enough)
        {
            var least = Enumerable.Range(0, chapters.Count).MinBy(Length);
            if (Length(least) >= shortest)
                return;
            if (TakesNext(least))
                chapters.RemoveAt(least + 1);
            else if (least > 0)
                chapters.RemoveAt(least);
            else
                MergeFirst();
        }

        // A title stands for what comes from its time on, so that nothing is given a title before what it names. The worthier of two
        // keeps its title where it is the earlier; where it is the later, what comes before it goes to the chapter before that.
        bool TakesNext(int index) =>
            index + 1 < chapters.Count && chapters[index].Topic.Weight >= chapters[index + 1].Topic.Weight
            && (index == 0 || chapters[index].Topic.Weight > chapters[index - 1].Topic.Weight || Length(index + 1) < Length(index - 1));

        // Nothing comes before the first, which begins the video whatever it names.
        void MergeFirst()
        {
            chapters[1] = (chapters[0].At, chapters[1].Topic);
            chapters.RemoveAt(0);
        }

        // As a list counts, in whole seconds.
        TimeSpan Length(int index) => TimeSpan.FromSeconds(
            ChapterRules.Seconds(index < chapters.Count - 1 ? chapters[index + 1].At : end) - ChapterRules.Seconds(chapters[index].At));
    }

    private static string Cut(string title) =>
        title.Length <= ChapterRules.LongestTitle ? title : string.Concat(title.AsSpan(0, ChapterRules.LongestTitle - 1), "…");
}
