namespace Companion.Engine.Proofs;

/// <summary>Finishes a filled template.</summary>
internal static class Sentence
{
    /// <summary>A capital at the start of each sentence; the name of a cell, such as <c>r1c2</c>, stays as it is.</summary>
    internal static string Capitalize(string text) => string.Create(text.Length, text, static (letters, text) =>
    {
        var starts = true;
        for (var at = 0; at < text.Length; at++)
        {
            var isCell = at + 1 < text.Length && text[at] == 'r' && char.IsAsciiDigit(text[at + 1]);
            letters[at] = starts && !isCell ? char.ToUpperInvariant(text[at]) : text[at];
            starts = text[at] is '.' or '?' or '!' || starts && text[at] == ' ';
        }
    });
}
