namespace Companion.Server.Chat.Irc.Lines;

/// <summary>Cuts a text into pieces that fit, at the end of a word where there is one.</summary>
internal static class TextPieces
{
    /// <summary>The pieces of a text, none of them empty and none that a chat could take for a command.</summary>
    /// <param name="text">The text.</param>
    /// <param name="budget">The most octets of a piece, at least 4: one character of UTF-8.</param>
    public static IEnumerable<string> Of(string text, int budget)
    {
        ArgumentOutOfRangeException.ThrowIfLessThan(budget, 4);
        for (var rest = ChatText.Sayable(text); rest.Length > 0;)
        {
            var length = Fitting(rest, budget);
            yield return rest[..length].TrimEnd();
            rest = ChatText.Sayable(rest[length..]);
        }
    }

    // How many characters to take: all, or up to the last space that still fits, or, within one long word, all that fit.
    private static int Fitting(string text, int budget)
    {
        var octets = 0;
        var length = 0;
        var wordEnd = 0;
        foreach (var rune in text.EnumerateRunes())
        {
            if (rune.Value == ' ')
                wordEnd = length;
            octets += rune.Utf8SequenceLength;
            if (octets > budget)
                return wordEnd > 0 ? wordEnd : length;
            length += rune.Utf16SequenceLength;
        }

        return length;
    }
}
