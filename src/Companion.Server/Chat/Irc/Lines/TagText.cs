using System.Text;

namespace Companion.Server.Chat.Irc.Lines;

/// <summary>The values of tags, in which five characters are escaped. Source: IRCv3, Message Tags.</summary>
internal static class TagText
{
    /// <summary>The value as it stands in a line.</summary>
    /// <param name="value">The value.</param>
    public static string Escape(string value)
    {
        var text = new StringBuilder(value.Length);
        foreach (var character in value)
        {
            text.Append(character switch
            {
                ';' => @"\:",
                ' ' => @"\s",
                '\\' => @"\\",
                '\r' => @"\r",
                '\n' => @"\n",
                _ => character.ToString(),
            });
        }

        return text.ToString();
    }

    /// <summary>The value that stands in a line. A backslash before any other character, or at the end, only vanishes.</summary>
    /// <param name="text">What stands there.</param>
    public static string Unescape(string text)
    {
        var value = new StringBuilder(text.Length);
        for (var at = 0; at < text.Length; at++)
        {
            if (text[at] != '\\')
                value.Append(text[at]);
            else if (++at < text.Length)
                value.Append(text[at] switch { ':' => ';', 's' => ' ', 'r' => '\r', 'n' => '\n', var other => other });
        }

        return value.ToString();
    }
}
