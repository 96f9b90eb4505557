namespace Companion.Engine.Tests.Rules;

/// <summary>
/// Positions made for the rules that turn up too seldom on the way through puzzles, or never twice on a board.
/// </summary>
internal static class RarePositions
{
    /// <summary>Whether there are positions made for the rule.</summary>
    public static bool Has(string rule) => rule is "remote-pairs" or "bivalue-universal-grave" || IsRectangle(rule);

    /// <summary>Several hundred positions for a rule that has some.</summary>
    public static IReadOnlyList<Board> For(string rule) => rule switch
    {
        "bivalue-universal-grave" => GravePositions.All,
        "remote-pairs" => PairPositions.All,
        _ when IsRectangle(rule) => RectanglePositions.All,
        _ => throw new ArgumentException($"No positions were made for {rule}.", nameof(rule)),
    };

    private static bool IsRectangle(string rule) => rule.Contains("unique-rectangle", StringComparison.Ordinal);
}
