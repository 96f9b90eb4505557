using System.Globalization;
using System.Text;

namespace Companion.Server.AfterShow;

/// <summary>
/// Markers for a cutting program as an edit decision list in the manner of CMX 3600: an event of one frame for each chapter, with a marker
/// (<c>* LOC:</c>) at its beginning. Such a list does not say its frame rate; who reads it must choose the same. The form is from memory
/// of common practice, and no reader of it but our own was ever tried.
/// </summary>
internal static class EditList
{
    private const int MostEvents = 999;

    /// <summary>Writes it.</summary>
    /// <param name="chapters">The chapters.</param>
    /// <param name="rate">The frame rate of the video.</param>
    public static string Write(ShowChapters chapters, FrameRate rate)
    {
        var text = new StringBuilder();
        text.Append(CultureInfo.InvariantCulture, $"TITLE: {Line(chapters.Title.Length > 0 ? chapters.Title : "Chapters", 70)}\nFCM: NON-DROP FRAME\n");
        var number = 0;
        foreach (var chapter in chapters.Chapters.Take(MostEvents))
        {
            var (start, end) = (rate.Timecode(chapter.At), rate.Timecode(chapter.At + TimeSpan.FromSeconds(1 / rate.PerSecond)));
            text.Append(
                CultureInfo.InvariantCulture,
                $"\n{++number:000}  AX       V     C        {start} {end} {start} {end}\n* LOC: {start} BLUE    {Line(chapter.Title, 100)}\n");
        }

        return text.ToString();
    }

    // Programs of that kind read lines of ASCII.
    private static string Line(string text, int longest)
    {
        var letters = text.Normalize(NormalizationForm.FormKD).Where(letter => CharUnicodeInfo.GetUnicodeCategory(letter) != UnicodeCategory.NonSpacingMark)
            .Select(letter => letter is >= ' ' and <= '~' ? letter : '-');
        return string.Concat(letters.Take(longest)).Trim();
    }
}
