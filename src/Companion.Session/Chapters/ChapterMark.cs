namespace Companion.Session.Chapters;

/// <summary>Where a chapter begins.</summary>
/// <param name="At">
/// The time in the recording as it was keyed, without the offset, so that the chapter moves with an offset that is corrected; where nothing
/// was recorded, the time since the show began.
/// </param>
/// <param name="Title">Its title.</param>
public sealed record ChapterMark(TimeSpan At, string Title);
