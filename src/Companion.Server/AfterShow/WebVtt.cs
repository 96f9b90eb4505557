using System.Text;

namespace Companion.Server.AfterShow;

/// <summary>WebVTT chapters (W3C, WebVTT: The Web Video Text Tracks Format): a cue for each chapter, from its beginning to the next.</summary>
internal static class WebVtt
{
    /// <summary>Writes it.</summary>
    public static string Write(ShowChapters chapters)
    {
        var text = new StringBuilder("WEBVTT\n");
        var all = chapters.Chapters;
        for (var index = 0; index < all.Length; index++)
        {
            // A cue ends after it begins, even where nothing is known of the video's end.
            var end = index < all.Length - 1 ? all[index + 1].At : chapters.Length;
            var least = all[index].At + TimeSpan.FromMilliseconds(1);
            text.Append(System.Globalization.CultureInfo.InvariantCulture, $"\n{index + 1}\n{Time(all[index].At)} --> {Time(end > least ? end : least)}\n{Escaped(all[index].Title)}\n");
        }

        return text.ToString();
    }

    private static string Time(TimeSpan at) =>
        FormattableString.Invariant($"{(int)at.TotalHours:00}:{at.Minutes:00}:{at.Seconds:00}.{at.Milliseconds:000}");

    // The text of a cue may hold neither the arrow nor what begins a tag or a character reference.
    private static string Escaped(string title) =>
        title.Replace("&", "&amp;", StringComparison.Ordinal).Replace("<", "&lt;", StringComparison.Ordinal).Replace(">", "&gt;", StringComparison.Ordinal);
}
