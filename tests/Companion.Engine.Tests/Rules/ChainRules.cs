namespace Companion.Engine.Tests.Rules;

/// <summary>
/// The rules that give each conclusion once, by a shortest pattern, so that what they find cannot be compared pattern by pattern.
/// </summary>
internal static class ChainRules
{
    public static IReadOnlyList<string> All { get; } =
        [
            "single-digit-chain", "xy-chain", "continuous-loop", "alternating-inference-chain", "grouped-chain",
            "almost-locked-set-ring", "almost-locked-set-pair", "almost-locked-set-triple", "almost-locked-set-blossom",
            "almost-locked-set-chain", "cell-forcing-chain", "house-forcing-chain", "joint-forcing-chain",
        ];

    /// <summary>Those of them that are told by their sets and cells.</summary>
    public static IReadOnlyList<string> BySets { get; } =
        ["almost-locked-set-ring", "almost-locked-set-pair", "almost-locked-set-triple", "almost-locked-set-blossom"];

    /// <summary>Those of them that start from several candidates, with a chain from each.</summary>
    public static IReadOnlyList<string> Forcing { get; } = ["cell-forcing-chain", "house-forcing-chain", "joint-forcing-chain"];
}
