using System.Collections.Immutable;
using Companion.Engine.Proofs;
using Companion.Engine.Rules;
using Companion.Server.Shows;
using Companion.Session.Chapters;
using Companion.Session.Shows;

namespace Companion.Server.AfterShow;

/// <summary>The chapters of a show, by their times in the video.</summary>
/// <param name="Title">The show's title; may be empty.</param>
/// <param name="Chapters">The chapters, in order; the first begins at 0.</param>
/// <param name="Length">How long the video is, as far as is known.</param>
/// <param name="IsEdited">Whether the presenter edited them.</param>
internal sealed record ShowChapters(string Title, ImmutableArray<ChapterMark> Chapters, TimeSpan Length, bool IsEdited)
{
    /// <summary>The chapters as they were edited or, where they were not, as the log tells them.</summary>
    /// <param name="opened">The show.</param>
    /// <param name="ladder">The whole ladder.</param>
    /// <param name="wording">The words.</param>
    public static ShowChapters Of(OpenedShow opened, Ladder ladder, Wording wording)
    {
        var show = opened.Show;
        var marks = opened.File.Chapters is [_, ..] edited ? edited : Outline.Of(show, Topics.Of(show, ladder), topic => ChapterTitle.Of(topic, wording));
        var chapters = Outline.InVideo(show, marks);

        // The video goes on after the last thing that happened: who puts a chapter there knows.
        var least = opened.File.Chapters is null ? TimeSpan.Zero : chapters[^1].At + ChapterRules.Shortest;
        return new(show.Title, chapters, show.VideoLength > least ? show.VideoLength : least, opened.File.Chapters is not null);
    }

    /// <summary>Chapters by their times in the video as they are kept: as keyed.</summary>
    /// <param name="edited">The chapters as they were edited; titles are cleaned of line breaks.</param>
    /// <param name="show">The show.</param>
    /// <exception cref="PlainException">There are too many, a title is empty or too long, or a time is none.</exception>
    public static ImmutableArray<ChapterMark> ToKeep(IEnumerable<ChapterMark> edited, StoredShow show)
    {
        ImmutableArray<ChapterMark> marks = [.. edited.OrderBy(mark => mark.At)
            .Select(mark => new ChapterMark(mark.At - show.Offset, new string([.. mark.Title.Select(letter => char.IsControl(letter) ? ' ' : letter)]).Trim()))];
        if (marks.Length is 0 or > 100)
            throw new PlainException("A show has 1 to 100 chapters: go back to those of the log, or merge some.");
        if (marks.FirstOrDefault(mark => mark.Title.Length is 0 or > ChapterRules.LongestTitle) is not null)
            throw new PlainException($"A chapter's title has 1 to {ChapterRules.LongestTitle} characters: correct it.");
        return marks.FirstOrDefault(mark => mark.At + show.Offset < TimeSpan.Zero || mark.At + show.Offset > TimeSpan.FromDays(1)) is not null
            ? throw new PlainException("A chapter begins within the video: correct its time.")
            : marks;
    }
}
