using System.Globalization;
using System.Text;

namespace Companion.Server.AfterShow;

/// <summary>The metadata text that FFmpeg reads and writes (FFmpeg formats documentation, "Metadata"), with times in milliseconds.</summary>
internal static class FfMetadata
{
    /// <summary>Writes it.</summary>
    public static string Write(ShowChapters chapters)
    {
        var text = new StringBuilder(";FFMETADATA1\n");
        if (chapters.Title.Length > 0)
            text.Append(CultureInfo.InvariantCulture, $"title={Escaped(chapters.Title)}\n");
        var all = chapters.Chapters;
        for (var index = 0; index < all.Length; index++)
        {
            var (start, end) = (Milliseconds(all[index].At), Milliseconds(index < all.Length - 1 ? all[index + 1].At : chapters.Length));
            text.Append(
                CultureInfo.InvariantCulture,
                $"[CHAPTER]\nTIMEBASE=1/1000\nSTART={start}\nEND={Math.Max(end, start + 1)}\ntitle={Escaped(all[index].Title)}\n");
        }

        return text.ToString();
    }

    private static long Milliseconds(TimeSpan at) => (long)at.TotalMilliseconds;

    private static string Escaped(string text)
    {
        var escaped = new StringBuilder(text.Length);
        foreach (var letter in text)
            (letter is '=' or ';' or '#' or '\\' or '\n' ? escaped.Append('\\') : escaped).Append(letter);
        return escaped.ToString();
    }
}
