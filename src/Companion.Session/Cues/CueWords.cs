using Companion.Session.State;

namespace Companion.Session.Cues;

/// <summary>Reads the words of a talking point.</summary>
internal static class CueWords
{
    /// <summary>Reads them as one line, without blanks at its ends.</summary>
    /// <param name="sent">What was sent.</param>
    /// <param name="text">The words.</param>
    /// <returns>Why they cannot be taken, in one plain sentence, or null.</returns>
    public static string? Read(string sent, out string text)
    {
        text = string.Join(' ', sent.Split((char[]?)null, StringSplitOptions.RemoveEmptyEntries));
        if (text.Length == 0)
            return "A talking point has words: write some.";
        if (text.Length > TextCallOut.LongestText)
            return $"A talking point has at most {TextCallOut.LongestText} characters: make two of it.";
        return text.Any(char.IsControl) ? "A talking point is one line of plain text: take the control characters out." : null;
    }
}
