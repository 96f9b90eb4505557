namespace Companion.Engine.Proofs;

/// <summary>The phrases of chapters' titles, and the slots that each may use.</summary>
internal static class ChapterPhrases
{
    private static readonly string[] NoSlot = [];

    internal static IReadOnlyDictionary<string, string[]> All { get; } = new Dictionary<string, string[]>
    {
        ["chapters.beginning"] = NoSlot,
        ["chapters.puzzle"] = ["title"],
        ["chapters.untitled"] = NoSlot,
        ["chapters.solved"] = NoSlot,
        ["chapters.with-pivot"] = ["rule", "pivot"],
        ["chapters.of-digit-in-house"] = ["rule", "digit", "house"],
        ["chapters.of-digit"] = ["rule", "digit"],
        ["chapters.in-house"] = ["rule", "house"],
        ["chapters.of-rule"] = ["rule"],
        ["chapters.several"] = ["rule", "number"],
    };
}
