using Companion.Engine.Rules;
using Companion.Engine.Search;

namespace Companion.Engine.Tests.Search;

public sealed class FixpointTests
{
    private static readonly IRule[] Rules = [new NakedSingle(), new HiddenSingle(), new Pointing(), new Claiming()];

    [Fact]
    public void No_rule_finds_anything_where_it_ends()
    {
        foreach (var seed in Enumerable.Range(0, 50))
        {
            var end = Fixpoint.Of(Generator.Make((ulong)seed).Board, Rules);
            var found = new Findings();
            Assert.All(Rules, rule => rule.Find(end, found));
            Assert.Empty(found);
        }
    }

    [Fact]
    public void It_ends_at_the_same_board_in_whatever_order_the_rules_come_and_one_by_one()
    {
        foreach (var seed in Enumerable.Range(0, 50))
        {
            var start = Generator.Make((ulong)seed).Board;
            var end = Fixpoint.Of(start, Rules);

            Assert.Equal(end.Candidates, Fixpoint.Of(start, [.. Rules.Reverse()]).Candidates);
            Assert.Equal(end.Candidates, OneByOne(start).Candidates);
            Assert.Equal(end.ToString(), OneByOne(start).ToString());
        }
    }

    [Fact]
    public void Without_rules_the_board_stays_as_it_is()
    {
        Assert.Same(Board.Blank, Fixpoint.Of(Board.Blank, []));
    }

    private static Board OneByOne(Board board)
    {
        while (true)
        {
            var found = new Findings();
            foreach (var rule in Rules)
                rule.Find(board, found);
            if (found.Count == 0)
                return board;
            board = board.Apply(found[^1]);
        }
    }
}
