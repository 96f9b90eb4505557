using System.Text;

namespace Companion.Session.Tests.Asks;

/// <summary>Lines as somebody might type who wants to break something, our own words among them.</summary>
internal static class HostileLine
{
    private static readonly string[] Parts =
    [
        "!hint", "!why", "!call", "!left", "!puzzle", "!delay", "!", "！ｈｉｎｔ", "hint", "r4c7", "r9c9", "r1c1", "R5C5", "r0c0", "r10c1", "ｒ４ｃ７",
        "1", "2", "3", "4", "5", "9", "-1", "99999999999999999999", "3.5", "٣", "\u0000", "\u0001ACTION", "\r\n", "\t", "\u200B", "\u202E", "\u200F",
        "\uD800", "\uDC00", "\uFFFD", "\U0001F9E9", "e\u0301", "İ", "ß", "%s%n", "{cells}", "{digits:or}", "'; DROP", "<script>", "../..", "\\", "@ann",
        "answer", "solution", "all", "=", "r4c7=5", "\u0003" + "4,5", "\uFE0F\u20E3",
    ];

    public static string Of(Random random)
    {
        var line = new StringBuilder(random.Next(3) == 0 ? "" : "!hint ");
        var parts = random.Next(8) == 0 ? 120 : random.Next(5);
        for (var part = 0; part < parts; part++)
        {
            line.Append(random.Next(12) == 0 ? Any(random) : Parts[random.Next(Parts.Length)]);
            if (random.Next(4) > 0)
                line.Append(' ');
        }

        return line.ToString();
    }

    // Any characters, halves of surrogate pairs among them.
    private static string Any(Random random) =>
        string.Concat(Enumerable.Range(0, random.Next(1, 30)).Select(_ => (char)random.Next(char.MaxValue + 1)));
}
