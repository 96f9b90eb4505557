using Companion.Engine.Rules;

namespace Companion.Engine.Tests.Rules;

/// <summary>What every test of a rule asserts.</summary>
internal static class RuleCheck
{
    /// <summary>
    /// The rule finds these on the board, in this order, and nothing else; and on the board transposed, rotated and relabelled it
    /// finds the same, moved.
    /// </summary>
    public static void Finds(IRule rule, Board board, params Found[] expected)
    {
        var actual = Find(rule, board);
        Assert.Equal(
            expected.Select((found, place) => found.Beside(actual.ElementAtOrDefault(place))),
            actual.Select(Found.Text));
        foreach (var symmetry in Symmetry.All)
        {
            Assert.Equal(
                actual.Select(deduction => Symmetry.Unordered(symmetry.Of(deduction))).Order(StringComparer.Ordinal),
                Find(rule, symmetry.Of(board)).Select(Symmetry.Unordered).Order(StringComparer.Ordinal));
        }
    }

    /// <summary>The rule finds nothing on the board.</summary>
    public static void FindsNothing(IRule rule, Board board) => Finds(rule, board);

    /// <summary>All that the whole ladder finds; the board must be one on the way through a puzzle.</summary>
    public static Findings Scan(Board board) => Ladder.Whole.Scan(board, TestContext.Current.CancellationToken);

    /// <summary>All that the rule finds.</summary>
    public static Findings Find(IRule rule, Board board)
    {
        var found = new Findings();
        rule.Find(board, found);
        return found;
    }
}
