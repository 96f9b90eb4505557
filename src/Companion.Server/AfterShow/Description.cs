using System.Text;
using Companion.Session.Chapters;
using Companion.Session.Events;
using Companion.Session.Shows;
using Companion.Session.State;

namespace Companion.Server.AfterShow;

/// <summary>The text below a video: what it is about, whom the puzzles are owed to, and the chapters.</summary>
internal static class Description
{
    /// <summary>The text.</summary>
    /// <param name="show">The show.</param>
    /// <param name="chapters">Its chapters; fewer than three are left out, since sites ignore such a list.</param>
    public static string Of(StoredShow show, ShowChapters chapters)
    {
        var text = new StringBuilder();
        if (show.Title.Length > 0)
            text.Append(show.Title).Append("\n\n");
        foreach (var credit in Credits(show))
            text.Append(Line(credit, show.Title)).Append('\n');
        if (Outline.ForSites(chapters.Chapters, chapters.Length).Length >= ChapterRules.Fewest)
            text.Append(Credits(show).Any() ? "\n" : "").Append("Chapters\n").Append(ChapterList.Write(chapters));

        return text.ToString();
    }

    /// <summary>Whom the puzzles of a show are owed to, in order, each once.</summary>
    /// <param name="show">The show.</param>
    public static IEnumerable<Credit> Credits(StoredShow show) => show.Events.OfType<PuzzleLoaded>()
        .Select(loaded => new Credit(loaded.Title, loaded.Setter, loaded.Link))
        .Where(credit => credit != new Credit("", "", ""))
        .Distinct();

    /// <summary>A credit in a line.</summary>
    /// <param name="credit">The credit.</param>
    /// <param name="known">What was said before it and is not said again.</param>
    public static string Line(Credit credit, string known = "")
    {
        var parts = new[]
        {
            credit.Title == known ? "" : credit.Title,
            credit.Setter.Length > 0 ? $"set by {credit.Setter}" : "",
            credit.Link,
        };
        var line = string.Join(", ", parts.Where(part => part.Length > 0));
        return line.Length == 0 ? "The puzzle" : $"Puzzle: {line}";
    }
}
