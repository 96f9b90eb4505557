namespace Companion.Session.Shows.Files;

/// <summary>Where a chapter begins, as the presenter edited it.</summary>
/// <param name="At">The time since the show began, so that it stays where it is when the recording's offset is corrected.</param>
/// <param name="Title">Its title.</param>
public sealed record ChapterMark(TimeSpan At, string Title);
