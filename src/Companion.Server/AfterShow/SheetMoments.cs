using System.Collections.Immutable;
using Companion.Drawing.Pictures;
using Companion.Drawing.Stills.Sheets;
using Companion.Session.AfterShow;
using Companion.Session.Chapters;
using Companion.Session.Events;
using Companion.Session.Shows;
using Companion.Session.Views;

namespace Companion.Server.AfterShow;

/// <summary>The moments of a show that mattered: what was put on air, and where chapters begin.</summary>
internal static class SheetMoments
{
    private static readonly TimeSpan Near = TimeSpan.FromSeconds(10);

    /// <summary>The moments in order; a chapter that begins with something that is put on air is not shown twice.</summary>
    /// <param name="show">The show.</param>
    /// <param name="chapters">Its chapters.</param>
    /// <param name="voice">The words.</param>
    public static ImmutableArray<SheetMoment> Of(StoredShow show, ImmutableArray<ChapterMark> chapters, Voice voice)
    {
        var airings = Airing.Of(show);
        var begun = chapters.Where(chapter => !airings.Any(airing => (airing.At - chapter.At).Duration() < Near));
        return
        [
            .. airings.Select(airing => (airing.At, Moment: OnAir(airing, voice)))
                .Concat(begun.Select(chapter => (chapter.At, Moment: Bare(chapter, EndOf(chapter), show, voice))))
                .OrderBy(each => each.At).Select(each => each.Moment),
        ];

        TimeSpan EndOf(ChapterMark chapter) => chapters.Where(next => next.At > chapter.At).Select(next => next.At).DefaultIfEmpty(TimeSpan.MaxValue).Min();
    }

    private static SheetMoment OnAir(Airing airing, Voice voice)
    {
        var hint = voice.Wording.HintsFor(airing.Cue.Chosen.Board, airing.Cue.Deduction)[airing.Cue.Grade];
        return new(VideoClock.Of(airing.At), hint.Words.Written, PublicViews.Stage(airing.Fullest.State, voice).Cells, PictureOf.Hint(hint));
    }

    // A chapter in which a puzzle begins is about that puzzle, though it may begin with the end of the one before.
    private static SheetMoment Bare(ChapterMark chapter, TimeSpan end, StoredShow show, Voice voice)
    {
        var loaded = show.Moments.FirstOrDefault(moment =>
            moment.Happened is PuzzleLoaded && VideoTime.Near(show, moment) is var at && at >= chapter.At && at < end);
        var moment = loaded ?? VideoTime.MomentAt(show, chapter.At);
        return new(VideoClock.Of(chapter.At), chapter.Title, PublicViews.Stage(moment.State, voice).Cells, null);
    }
}
