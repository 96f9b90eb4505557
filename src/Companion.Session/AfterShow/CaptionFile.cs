using System.Globalization;
using System.Text;

namespace Companion.Session.AfterShow;

/// <summary>Captions as the files that players and video sites read.</summary>
public static class CaptionFile
{
    // Common practice for captions of one speaker.
    private const int LineLength = 42;

    /// <summary>As SubRip: numbers, times with a comma, plain words.</summary>
    /// <param name="captions">The captions in order.</param>
    public static string Srt(IEnumerable<Caption> captions)
    {
        ArgumentNullException.ThrowIfNull(captions);
        var file = new StringBuilder();
        foreach (var (caption, index) in captions.Select((caption, index) => (caption, index)))
            file.Append(CultureInfo.InvariantCulture, $"{index + 1}\n{Time(caption.From, ',')} --> {Time(caption.To, ',')}\n{Lines(Plain(caption.Text))}\n\n");
        return file.ToString();
    }

    /// <summary>As WebVTT (W3C): what its text would take for a tag or a time is escaped.</summary>
    /// <param name="captions">The captions in order.</param>
    public static string WebVtt(IEnumerable<Caption> captions)
    {
        ArgumentNullException.ThrowIfNull(captions);
        var file = new StringBuilder("WEBVTT\n\n");
        foreach (var caption in captions)
            file.Append(CultureInfo.InvariantCulture, $"{Time(caption.From, '.')} --> {Time(caption.To, '.')}\n{Escaped(Lines(caption.Text))}\n\n");
        return file.ToString();
    }

    private static string Time(TimeSpan time, char point) => string.Create(
        CultureInfo.InvariantCulture, $"{(int)time.TotalHours:00}:{time.Minutes:00}:{time.Seconds:00}{point}{time.Milliseconds:000}");

    private static string Escaped(string text) => text
        .Replace("&", "&amp;", StringComparison.Ordinal)
        .Replace("<", "&lt;", StringComparison.Ordinal)
        .Replace(">", "&gt;", StringComparison.Ordinal);

    // SubRip has no escapes, and players take angle brackets for tags and braces for styles: signs of the same meaning instead.
    private static string Plain(string text) => text
        .Replace("-->", "→", StringComparison.Ordinal)
        .Replace('<', '‹').Replace('>', '›').Replace('{', '(').Replace('}', ')');

    private static string Lines(string text)
    {
        var lines = new List<string>();
        foreach (var word in text.Split(' ', StringSplitOptions.RemoveEmptyEntries))
        {
            if (lines.Count > 0 && lines[^1].Length + 1 + word.Length <= LineLength)
                lines[^1] += $" {word}";
            else
                lines.Add(word);
        }

        return string.Join('\n', lines);
    }
}
