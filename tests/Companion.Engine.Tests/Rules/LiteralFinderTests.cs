using Companion.Engine.Rules;

namespace Companion.Engine.Tests.Rules;

/// <summary>
/// Every rule finds exactly what its literal finder finds: nothing is missed, and nothing is there that should not be.
/// </summary>
public sealed class LiteralFinderTests(ITestOutputHelper output)
{
    public static TheoryData<string> Rules => [.. LiteralFinders.All.Keys];

    [Fact]
    public void Every_rule_of_the_ladder_has_a_literal_finder_or_is_compared_in_another_way() =>
        Assert.Equal(
            Ladder.Whole.Rules.Select(rule => rule.Id.Value).Order(StringComparer.Ordinal),
            LiteralFinders.All.Keys.Concat(ChainRules.All).Concat(NetRules.All).Order(StringComparer.Ordinal));

    [Theory]
    [MemberData(nameof(Rules))]
    public void A_rule_and_its_literal_finder_agree_on_the_ways_through_our_own_puzzles(string rule)
    {
        Assert.True(SolvingPath.OwnPositions.Count >= 5_000);
        var boards = SolvingPath.OwnPositions.Select(position => position.Board).ToList();
        output.WriteLine(LiteralComparison.Compare(rule, boards, atLeast: RarePositions.Has(rule) ? 0 : 200));
    }

    [Theory]
    [MemberData(nameof(Rules))]
    public void A_rule_and_its_literal_finder_agree_where_rare_patterns_were_made(string rule)
    {
        var boards = RarePositions.Has(rule) ? RarePositions.For(rule) : [.. PairPositions.All.Take(60)];
        output.WriteLine(LiteralComparison.Compare(rule, boards, atLeast: RarePositions.Has(rule) ? 200 : 0));
    }

    [Theory]
    [MemberData(nameof(Rules))]
    public void A_rule_and_its_literal_finder_agree_where_candidates_were_struck_at_random(string rule)
    {
        var random = new Random(5);
        var damaged = SolvingPath.OwnPositions
            .Where((_, place) => place % 8 == 0)
            .Select(position => Strike(position.Board, random))
            .ToList();
        output.WriteLine(LiteralComparison.Compare(rule, damaged, atLeast: RarePositions.Has(rule) ? 0 : 100));
    }

    // One candidate of four, true or not, so that cells and houses come up that no puzzle has.
    private static Board Strike(Board board, Random random) =>
        board.Remove(CandidateSet.Of([.. board.Candidates.Where(_ => random.Next(4) == 0)]));
}
