namespace Companion.Engine.Tests.Rules;

/// <summary>
/// The rules that give each conclusion once, by a shortest pattern, so that what they find cannot be compared pattern by pattern.
/// </summary>
internal static class ChainRules
{
    public static IReadOnlyList<string> All { get; } =
        ["single-digit-chain", "xy-chain", "continuous-loop", "alternating-inference-chain", "grouped-chain"];
}
