using Companion.Drawing.Stills;

namespace Companion.Drawing.Paper;

/// <summary>How words are set.</summary>
/// <param name="Left">Their left edge on the page.</param>
/// <param name="Width">How wide a line is.</param>
internal sealed record TextPlace(float Left, float Width)
{
    internal float Size { get; init; } = Measures.Text;

    internal bool IsBold { get; init; }

    internal bool IsQuiet { get; init; }

    /// <summary>How much further to the right the first line begins.</summary>
    internal float FirstIndent { get; init; }
}

/// <summary>Breaks words into lines, a strip each.</summary>
internal static class TextStrips
{
    /// <summary>The lines. No line of a paragraph stands alone on a page: the first two and the last two stay together.</summary>
    internal static List<Strip> Of(Lettering letters, string text, TextPlace place)
    {
        var strips = new List<Strip>();
        foreach (var line in Lines(letters, text, place))
        {
            var left = place.Left + (strips.Count == 0 ? place.FirstIndent : 0);
            strips.Add(new(
                place.Size * Measures.Leading,
                (sheet, top) => sheet.Write(line, left, top, place.Size, place.IsBold, place.IsQuiet)));
        }

        for (var line = 0; line < strips.Count - 1; line++)
            strips[line] = strips[line] with { StaysWithNext = line == 0 || line == strips.Count - 2 };
        return strips;
    }

    // A word that is wider than a line, such as an address, is cut where the line ends.
    private static IEnumerable<string> Lines(Lettering letters, string text, TextPlace place)
    {
        foreach (var line in TextBlock.Break(letters, text, place.Size, place.IsBold, place.Width, place.FirstIndent))
        {
            var rest = line;
            while (letters.WidthOf(rest, place.Size, place.IsBold) > place.Width && rest.Length > 1)
            {
                var fit = rest.Length - 1;
                while (fit > 1 && letters.WidthOf(rest[..fit], place.Size, place.IsBold) > place.Width)
                    fit--;
                yield return rest[..fit];
                rest = rest[fit..];
            }

            yield return rest;
        }
    }
}
