using Companion.Engine.Rules;
using Companion.Engine.Rules.Nets;

namespace Companion.Engine.Tests.Rules;

/// <summary>Two searches that make a trial together leave nothing out, do nothing twice and come to what one comes to.</summary>
public sealed class NetPartsTests
{
    [Fact]
    public async Task Two_searches_take_each_part_once()
    {
        const int Count = 100_000;
        var parts = new NetParts(() => false);

        var taken = await Task.WhenAll(Task.Run(Taken), Task.Run(Taken));

        Assert.Equal(Enumerable.Range(0, Count), taken[0].Concat(taken[1]).Order());

        List<int> Taken() => [.. Enumerable.Range(0, Count).Where(parts.Takes)];
    }

    [Fact]
    public void The_first_part_that_has_a_net_counts_and_those_after_it_are_off()
    {
        var parts = new NetParts(() => false);

        Assert.True(parts.Finds(5));
        Assert.False(parts.IsOff(4));
        Assert.True(parts.IsOff(6));
        Assert.True(parts.Finds(2));
        Assert.False(parts.Finds(3));
        Assert.True(parts.IsOff(3));
    }

    // The nets come by the candidate, so that one who wants fewer gets the first of them.
    [Theory]
    [InlineData(1)]
    [InlineData(2)]
    [InlineData(int.MaxValue)]
    public void Two_cores_find_the_first_of_what_one_finds_when_fewer_are_wanted(int wanted)
    {
        var several = 0;
        foreach (var board in NetPositions.All.Where(board => !board.IsFull))
        {
            var (one, two) = (new Findings(), new Findings(wanted) { Cores = 2 });
            new ForcingNet().Find(board, one);
            new ForcingNet().Find(board, two);

            Assert.Equal(one.Take(wanted), two);
            several += one.Count > 2 ? 1 : 0;
        }

        Assert.True(several > 5, $"{several}");
    }
}
