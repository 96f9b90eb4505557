using SkiaSharp;

namespace Companion.Drawing.Stills;

/// <summary>Words broken into lines of a width, and made smaller until they fit a height.</summary>
/// <param name="Lines">The lines.</param>
/// <param name="Size">Size of the letters in pixels.</param>
internal sealed record TextBlock(IReadOnlyList<string> Lines, float Size)
{
    private const float Leading = 1.35f;
    private const float Shrink = 0.92f;
    private const float Smallest = 0.6f;

    internal float LineHeight => Size * Leading;

    internal float Height => Lines.Count * LineHeight;

    /// <summary>Breaks a text; what does not fit even at the smallest share of the size is cut off with an ellipsis.</summary>
    internal static TextBlock Fit(Lettering letters, string text, float size, bool bold, SKSize room, float smallest = Smallest)
    {
        for (var smaller = size; ; smaller *= Shrink)
        {
            var block = new TextBlock(Break(letters, text, smaller, bold, room.Width), smaller);
            var isNarrow = block.Lines.All(line => letters.WidthOf(line, smaller, bold) <= room.Width);
            if (isNarrow && block.Height <= room.Height)
                return block;
            if (smaller * Shrink < size * smallest)
                return block.CutTo(letters, bold, room);
        }
    }

    /// <summary>Breaks a text between its words; a word that is wider than a line gets a line of its own.</summary>
    /// <param name="letters">What measures it.</param>
    /// <param name="text">The text.</param>
    /// <param name="size">Size of the letters.</param>
    /// <param name="bold">Their weight.</param>
    /// <param name="width">How wide a line is.</param>
    /// <param name="indent">How much narrower the first line is.</param>
    internal static List<string> Break(Lettering letters, string text, float size, bool bold, float width, float indent = 0)
    {
        var lines = new List<string>();
        foreach (var word in text.Split(' ', StringSplitOptions.RemoveEmptyEntries))
        {
            var room = lines.Count == 1 ? width - indent : width;
            if (lines.Count > 0 && letters.WidthOf($"{lines[^1]} {word}", size, bold) <= room)
                lines[^1] += $" {word}";
            else
                lines.Add(word);
        }

        return lines;
    }

    private TextBlock CutTo(Lettering letters, bool bold, SKSize room)
    {
        var count = Math.Max(1, (int)(room.Height / LineHeight));
        var lines = Lines.Take(count).Select(line => Cut(line, isLast: false)).ToList();
        if (lines.Count < Lines.Count)
            lines[^1] = Cut(lines[^1], isLast: true);
        return this with { Lines = lines };

        string Cut(string line, bool isLast)
        {
            var (cut, whole) = (line, isLast ? line + "…" : line);
            while (cut.Length > 0 && letters.WidthOf(whole, Size, bold) > room.Width)
            {
                // Between words; within a word only where it is alone.
                cut = cut.LastIndexOf(' ') is > 0 and var space ? cut[..space] : cut[..^1];
                whole = cut + "…";
            }

            return whole;
        }
    }
}
