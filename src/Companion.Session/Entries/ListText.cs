using Companion.Engine;

namespace Companion.Session.Entries;

/// <summary>Lists in a sentence.</summary>
internal static class ListText
{
    // More names than this are read by nobody.
    private const int Longest = 3;

    /// <summary>Up to three cells by name, more by number.</summary>
    public static string Of(CellSet cells) =>
        cells.Count > Longest ? $"{cells.Count} cells" : Join([.. cells.Select(cell => cell.ToString())]);

    /// <summary>Up to three things by name, and how many more there are.</summary>
    public static string Of(IReadOnlyList<string> things) => things.Count > Longest
        ? $"{string.Join(", ", things.Take(Longest))} and {things.Count - Longest} more"
        : Join(things);

    private static string Join(IReadOnlyList<string> names) =>
        names.Count == 1 ? names[0] : $"{string.Join(", ", names.SkipLast(1))} and {names[^1]}";
}
