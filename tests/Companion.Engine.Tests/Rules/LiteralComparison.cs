using Companion.Engine.Rules;

namespace Companion.Engine.Tests.Rules;

/// <summary>A rule beside its literal finder.</summary>
internal static class LiteralComparison
{
    /// <summary>Asserts that both find the same on every board.</summary>
    /// <param name="name">The rule's name.</param>
    /// <param name="boards">The boards.</param>
    /// <param name="atLeast">How many instances there must be for the comparison to count.</param>
    /// <returns>What was compared, in one line.</returns>
    public static string Compare(string name, IReadOnlyList<Board> boards, int atLeast)
    {
        var rule = Ladder.Whole.Rules.Single(rule => rule.Id.Value == name);
        var find = LiteralFinders.All[name];
        var instances = 0;
        if (name.StartsWith("finned", StringComparison.Ordinal)) // Their literal finder takes its time.
            boards = [.. boards.Where((_, place) => place % 5 == 0)];
        foreach (var board in boards)
        {
            var literal = find(new LiteralGrid(board));
            var actual = RuleCheck.Find(rule, board);
            Assert.Equal(literal.Order(StringComparer.Ordinal), actual.Select(Literal.Text).Order(StringComparer.Ordinal));
            instances += actual.Count;
        }

        Assert.True(instances >= atLeast, $"Only {instances} instances of {name} were compared.");
        return $"{name}: {instances} instances on {boards.Count} positions, the same in both.";
    }
}
