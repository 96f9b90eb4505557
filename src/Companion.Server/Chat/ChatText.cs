using System.Globalization;
using System.Text;
using System.Text.RegularExpressions;

namespace Companion.Server.Chat;

/// <summary>
/// Text that a chat brings or takes. What chats put between the letters, colours and other formatting, is taken out both ways, and
/// so is what could change how a line is read: control characters, and those that turn the direction of writing.
/// </summary>
internal static partial class ChatText
{
    /// <summary>The text of a line without formatting; tabs and line breaks are spaces, and there are none at its ends.</summary>
    /// <param name="text">What came or is to go out.</param>
    public static string Plain(string text)
    {
        var kept = new StringBuilder(text.Length);
        foreach (var rune in Formatting().Replace(text, "").EnumerateRunes())
        {
            if (IsSpace(rune))
                kept.Append(' ');
            else if (!IsUnwanted(rune))
                kept.Append(rune);
        }

        return Spaces().Replace(kept.ToString(), " ").Trim();
    }

    /// <summary>
    /// A line to be said: plain, and without the signs in front that a chat, or another program in it, takes for a command.
    /// </summary>
    /// <param name="text">What is to be said.</param>
    /// <returns>The line; empty where nothing is left to say.</returns>
    public static string Sayable(string text) => Plain(text).TrimStart('/', '.', '!', ' ');

    private static bool IsSpace(Rune rune) =>
        rune.Value is '\t' or '\r' or '\n' || Rune.GetUnicodeCategory(rune)
            is UnicodeCategory.SpaceSeparator or UnicodeCategory.LineSeparator or UnicodeCategory.ParagraphSeparator;

    // EnumerateRunes makes U+FFFD of half a surrogate pair: not a letter either.
    private static bool IsUnwanted(Rune rune) => Rune.IsControl(rune) || IsBidi(rune.Value) || rune.Value is 0xFEFF or 0xFFFD;

    // The characters that are Bidi_Control in the Unicode character database.
    private static bool IsBidi(int value) => value is 0x061C or 0x200E or 0x200F or (>= 0x202A and <= 0x202E) or (>= 0x2066 and <= 0x2069);

    // After 03 up to two digits are eaten, and two more after a comma; after 04 six hexadecimal ones the same way. The other bytes of
    // formatting are control characters and go with them.
    [GeneratedRegex(@"\x03(?:\d{1,2}(?:,\d{1,2})?)?|\x04(?:[0-9A-Fa-f]{6}(?:,[0-9A-Fa-f]{6})?)?", RegexOptions.ECMAScript)]
    private static partial Regex Formatting();

    [GeneratedRegex(" {2,}")]
    private static partial Regex Spaces();
}
