using System.Collections.Immutable;
using Companion.Server.AfterShow;
using Companion.Session.Chapters;

namespace Companion.Server.Wire;

/// <summary>The chapters of a show.</summary>
/// <param name="Show">The show's number.</param>
/// <param name="Title">Its title.</param>
/// <param name="Chapters">The chapters, in order.</param>
/// <param name="Length">How long the video is, in seconds, as far as is known.</param>
/// <param name="Offset">The recording's offset in seconds.</param>
/// <param name="IsRecorded">Whether a recording was keyed; else times are counted from the show's first event.</param>
/// <param name="IsEdited">Whether the presenter edited them.</param>
/// <param name="Broken">What video sites would ignore the list for, each in one plain sentence.</param>
public sealed record ChaptersWire(
    int Show,
    string Title,
    ImmutableArray<ChaptersWire.Mark> Chapters,
    double Length,
    double Offset,
    bool IsRecorded,
    bool IsEdited,
    ImmutableArray<string> Broken)
{
    internal static ChaptersWire Of(int show, ShowChapters chapters, double offset, bool isRecorded) => new(
        show,
        chapters.Title,
        [.. chapters.Chapters.Select(chapter => new Mark(Math.Round(chapter.At.TotalSeconds, 3), chapter.Title))],
        Math.Round(chapters.Length.TotalSeconds, 3),
        offset,
        isRecorded,
        chapters.IsEdited,
        ChapterRules.Broken(chapters.Chapters, chapters.Length));

    /// <summary>A chapter.</summary>
    /// <param name="At">When it begins, in seconds of the video.</param>
    /// <param name="Title">Its title.</param>
    public sealed record Mark(double At, string Title);
}
