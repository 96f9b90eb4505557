using System.Collections.Immutable;
using Companion.Drawing.Pictures;
using Companion.Drawing.Stills.Sheets;
using Companion.Session.AfterShow;
using Companion.Session.Chapters;
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
                .Concat(begun.Select(chapter => (chapter.At, Moment: Bare(chapter, show, voice))))
                .OrderBy(each => each.At).Select(each => each.Moment),
        ];
    }

    private static SheetMoment OnAir(Airing airing, Voice voice)
    {
        var hint = voice.Wording.HintsFor(airing.Cue.Chosen.Board, airing.Cue.Deduction)[airing.Cue.Grade];
        return new(VideoClock.Of(airing.At), hint.Words.Written, PublicViews.Stage(airing.Fullest.State, voice).Cells, PictureOf.Hint(hint));
    }

    private static SheetMoment Bare(ChapterMark chapter, StoredShow show, Voice voice) => new(
        VideoClock.Of(chapter.At), chapter.Title, PublicViews.Stage(VideoTime.MomentAt(show, chapter.At).State, voice).Cells, null);
}
