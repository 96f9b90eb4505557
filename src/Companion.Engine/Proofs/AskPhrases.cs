namespace Companion.Engine.Proofs;

/// <summary>The phrases of answers to viewers, and the slots that each may use.</summary>
/// <remarks>A hint's own words go into <c>missing-step</c> and <c>why-after</c>; no other phrase has a slot for anything of a deduction.</remarks>
internal static class AskPhrases
{
    private static readonly string[] NoSlot = [];
    private static readonly string[] OfCell = ["cell"];
    private static readonly string[] OfPrefix = ["prefix"];

    internal static IReadOnlyDictionary<string, string[]> All { get; } = new Dictionary<string, string[]>
    {
        ["asks.name"] = ["name"],
        ["asks.to"] = ["names", "answer"],
        ["asks.to-many"] = ["number", "answer"],
        ["asks.missing-step"] = ["hint"],
        ["asks.nothing"] = NoSlot,
        ["asks.nothing-at"] = OfCell,
        ["asks.filled"] = ["cell", "prefix"],
        ["asks.filled-on-page"] = OfCell,
        ["asks.counted"] = NoSlot,
        ["asks.called"] = NoSlot,
        ["asks.no-further"] = ["grade"],
        ["asks.all-given"] = NoSlot,
        ["asks.too-soon"] = ["seconds"],
        ["asks.why-after"] = ["number", "hint"],
        ["asks.why-given"] = OfCell,
        ["asks.why-open"] = OfCell,
        ["asks.why-unknown"] = OfCell,
        ["asks.left"] = ["digits"],
        ["asks.left-of-digit"] = ["digit", "number"],
        ["asks.left-none"] = NoSlot,
        ["asks.puzzle.title"] = ["title"],
        ["asks.puzzle.untitled"] = NoSlot,
        ["asks.puzzle.setter"] = ["puzzle", "setter"],
        ["asks.puzzle.link"] = ["puzzle", "link"],
        ["asks.how.hint"] = OfPrefix,
        ["asks.how.why"] = OfPrefix,
        ["asks.how.call"] = OfPrefix,
        ["asks.how.left"] = OfPrefix,
        ["asks.how.puzzle"] = OfPrefix,
        ["asks.how.delay"] = OfPrefix,
    };
}
