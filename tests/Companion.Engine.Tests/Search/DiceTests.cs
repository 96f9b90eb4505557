using Companion.Engine.Search;

namespace Companion.Engine.Tests.Search;

public sealed class DiceTests
{
    // Source: the first outputs of SplitMix64 for the seed 1234567, as widely reproduced for checking; from memory.
    [Fact]
    public void It_throws_the_published_numbers()
    {
        var dice = new Dice(1234567);

        Assert.Equal<ulong>([6457827717110365317, 3203168211198807973, 9817491932198370423], [dice.Next(), dice.Next(), dice.Next()]);
    }

    [Fact]
    public void Numbers_below_a_bound_come_about_equally_often()
    {
        var dice = new Dice(7);
        var counts = new int[6];
        for (var thrown = 0; thrown < 60_000; thrown++)
            counts[dice.Below(6)]++;

        // 10,000 each is expected, with a standard deviation of 91.
        Assert.All(counts, count => Assert.InRange(count, 9_600, 10_400));
    }

    [Fact]
    public void Shuffling_keeps_the_items_and_makes_every_order()
    {
        var dice = new Dice(3);
        var orders = new HashSet<string>();
        for (var shuffled = 0; shuffled < 1_000; shuffled++)
        {
            char[] items = ['a', 'b', 'c', 'd'];
            dice.Shuffle<char>(items);
            orders.Add(new(items));
        }

        Assert.Equal(24, orders.Count);
        Assert.All(orders, order => Assert.Equal("abcd", string.Concat(order.Order())));
    }
}
