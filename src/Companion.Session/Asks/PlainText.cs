using System.Globalization;
using System.Text;

namespace Companion.Session.Asks;

/// <summary>
/// Makes what people type on all kinds of keyboards plain: lower case, digits of any script and full-width letters as ASCII, one
/// kind of blank. One pass over the text, whatever it holds.
/// </summary>
internal static class PlainText
{
    // The full-width forms of ! to ~ lie this far behind them (Unicode, Halfwidth and Fullwidth Forms, FF01 to FF5E).
    private const int FullWidth = 0xFF01 - '!';

    public static string Of(string text)
    {
        var plain = new StringBuilder(text.Length);
        foreach (var rune in text.EnumerateRunes())
            Append(plain, rune);
        return plain.ToString();
    }

    private static void Append(StringBuilder plain, Rune rune)
    {
        if (rune.Value is >= 0xFF01 and <= 0xFF5E)
            rune = new(rune.Value - FullWidth);
        switch (Rune.GetUnicodeCategory(rune))
        {
            case UnicodeCategory.DecimalDigitNumber:
                plain.Append((char)('0' + (int)Rune.GetNumericValue(rune)));
                break;
            case UnicodeCategory.Control or UnicodeCategory.SpaceSeparator:
            case UnicodeCategory.LineSeparator or UnicodeCategory.ParagraphSeparator:
                plain.Append(' ');
                break;

            // Nothing to read: direction and joining marks, the frame of a keycap, what a client adds to make a line differ.
            case UnicodeCategory.Format or UnicodeCategory.NonSpacingMark or UnicodeCategory.EnclosingMark:
            case UnicodeCategory.PrivateUse or UnicodeCategory.OtherNotAssigned:
                break;
            default:
                plain.Append(Rune.ToLowerInvariant(rune).ToString());
                break;
        }
    }
}
