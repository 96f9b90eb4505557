using Companion.Session.Chapters;

namespace Companion.Server.AfterShow;

/// <summary>The list for a description: a line each, <c>M:SS Title</c>, or <c>H:MM:SS Title</c> from one hour on. What is too short for it is left out.</summary>
internal static class ChapterList
{
    /// <summary>Writes it.</summary>
    public static string Write(ShowChapters chapters) => string.Concat(Outline.ForSites(chapters.Chapters, chapters.Length)
        .Select(chapter => $"{Clock(ChapterRules.Seconds(chapter.At), chapters.Length >= TimeSpan.FromHours(1))} {chapter.Title}\n"));

    /// <summary>A time as the list has it.</summary>
    /// <param name="seconds">Whole seconds.</param>
    /// <param name="hours">Whether hours stand in the list.</param>
    internal static string Clock(long seconds, bool hours) => hours
        ? FormattableString.Invariant($"{seconds / 3600}:{seconds / 60 % 60:00}:{seconds % 60:00}")
        : FormattableString.Invariant($"{seconds / 60}:{seconds % 60:00}");
}
