using System.Globalization;
using System.Text;

namespace Companion.Session.Asks.Answers;

/// <summary>Makes a display name fit to stand in a line: one line, no controls, no change of direction, not too long.</summary>
internal static class ViewerName
{
    /// <summary>The longest name that is shown whole, in letters; IRC servers allow 9 to some 30.</summary>
    public const int Longest = 24;

    private const string Nameless = "viewer";

    public static string Of(string name)
    {
        var shown = new StringBuilder();
        var letters = 0;
        foreach (var rune in name.EnumerateRunes())
        {
            if (letters == Longest)
                break;
            if (!IsShown(rune))
                continue;
            shown.Append(rune.ToString());
            letters++;
        }

        return shown.Length == 0 ? Nameless : shown.ToString();
    }

    // Letters, digits and what names have between them. All else could be mistaken for a part of the answer.
    private static bool IsShown(Rune rune) => rune.Value is '_' or '-' || Rune.GetUnicodeCategory(rune) is
        UnicodeCategory.UppercaseLetter or UnicodeCategory.LowercaseLetter or UnicodeCategory.TitlecaseLetter
        or UnicodeCategory.ModifierLetter or UnicodeCategory.OtherLetter or UnicodeCategory.DecimalDigitNumber;
}
