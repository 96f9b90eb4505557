namespace Companion.Engine.Proofs;

/// <summary>Finishes a filled template.</summary>
internal static class Sentence
{
    /// <summary>A capital at the start of each sentence.</summary>
    internal static string Capitalize(string text) => string.Create(text.Length, text, static (letters, text) =>
    {
        var starts = true;
        for (var at = 0; at < text.Length; at++)
        {
            letters[at] = starts ? char.ToUpperInvariant(text[at]) : text[at];
            starts = text[at] is '.' or '?' or '!' || starts && text[at] == ' ';
        }
    });
}
