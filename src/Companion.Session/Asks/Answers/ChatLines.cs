using System.Collections.Immutable;
using System.Text;

namespace Companion.Session.Asks.Answers;

/// <summary>Lays text out in lines of a chat. Nothing is cut off: what does not fit goes on in the next line.</summary>
public static class ChatLines
{
    /// <summary>
    /// How long a line may be, in octets of UTF-8. IRC leaves 460 or so of its 512 after the sender's and the channel's names.
    /// </summary>
    public const int Octets = 400;

    /// <summary>The text in as few lines as it takes, broken at blanks where there are any.</summary>
    public static ImmutableArray<string> Of(string text)
    {
        ArgumentNullException.ThrowIfNull(text);
        var lines = ImmutableArray.CreateBuilder<string>();
        var rest = text.AsSpan();
        while (Encoding.UTF8.GetByteCount(rest) > Octets)
        {
            var fits = Fits(rest);
            var blank = rest[..(fits + 1)].LastIndexOf(' ');
            lines.Add(rest[..(blank > 0 ? blank : fits)].ToString());
            rest = blank > 0 ? rest[(blank + 1)..] : rest[fits..];
        }

        if (!rest.IsEmpty)
            lines.Add(rest.ToString());
        return lines.ToImmutable();
    }

    // How many characters fit, at the border of a code point.
    private static int Fits(ReadOnlySpan<char> text)
    {
        var octets = 0;
        var at = 0;
        foreach (var rune in text.EnumerateRunes())
        {
            octets += rune.Utf8SequenceLength;
            if (octets > Octets)
                break;
            at += rune.Utf16SequenceLength;
        }

        return at;
    }
}
