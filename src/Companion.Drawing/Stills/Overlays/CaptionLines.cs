namespace Companion.Drawing.Stills.Overlays;

/// <summary>
/// Breaks a caption into lines as browsers do where they are asked for pretty ones (CSS Text 4, <c>text-wrap: pretty</c>): line by line,
/// but where a short word would be left alone on the last one, the last four lines are evened out.
/// </summary>
internal static class CaptionLines
{
    private const int Evened = 4;
    private const double Short = 1.0 / 3;

    /// <summary>The lines, at least one; a word that is wider than the room has a line of its own.</summary>
    /// <param name="words">The words.</param>
    /// <param name="room">The room's width.</param>
    /// <param name="widthOf">How wide some text is.</param>
    internal static IReadOnlyList<string> Of(IReadOnlyList<string> words, double room, Func<string, double> widthOf)
    {
        var lines = new List<int>();
        for (var word = 0; word < words.Count; word++)
        {
            if (lines.Count == 0 || widthOf(Text(words, lines[^1], word + 1)) > room)
                lines.Add(word);
        }

        if (lines.Count > 1 && lines[^1] == words.Count - 1 && widthOf(words[^1]) < room * Short)
            Even(lines, words, room, widthOf);
        return [.. lines.Select((first, line) => Text(words, first, line + 1 < lines.Count ? lines[line + 1] : words.Count))];
    }

    // The least sum of squares of what is left free, over as many lines as there are.
    private static void Even(List<int> lines, IReadOnlyList<string> words, double room, Func<string, double> widthOf)
    {
        var count = Math.Min(Evened, lines.Count);
        var best = Best(lines[^count], count);
        for (var line = 0; best is not null && line < count; line++)
            lines[lines.Count - count + line] = best.Value.Starts[line];

        (double Cost, List<int> Starts)? Best(int first, int left)
        {
            (double Cost, List<int> Starts)? best = null;
            for (var end = first + 1; end <= words.Count; end++)
            {
                var free = room - widthOf(Text(words, first, end));
                if (free < 0)
                    break;
                if (left == 1 && end < words.Count)
                    continue;
                var rest = left == 1 ? (0, []) : end < words.Count ? Best(end, left - 1) : null;
                if (rest is { } after && (best is null || after.Cost + free * free < best.Value.Cost))
                    best = (after.Cost + free * free, [first, .. after.Starts]);
            }

            return best;
        }
    }

    private static string Text(IReadOnlyList<string> words, int first, int end) => string.Join(' ', words.Skip(first).Take(end - first));
}
