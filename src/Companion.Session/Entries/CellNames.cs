using Companion.Engine;

namespace Companion.Session.Entries;

/// <summary>Cells in a sentence: up to three by name, more by number.</summary>
internal static class CellNames
{
    public static string Of(CellSet cells)
    {
        string[] names = [.. cells.Select(cell => cell.ToString())];
        return names.Length switch
        {
            1 => names[0],
            2 or 3 => $"{string.Join(", ", names[..^1])} and {names[^1]}",
            _ => $"{names.Length} cells",
        };
    }
}
