namespace Companion.Sight.Tests;

public sealed class RankedTests
{
    [Theory]
    [InlineData(1, 1)]
    [InlineData(2, 3)]
    [InlineData(100, 5)]
    [InlineData(999, 1000)]
    public void The_value_at_a_rank_is_that_of_the_sorted_values(int count, int kinds)
    {
        var random = new Random(count);
        float[] values = [.. Enumerable.Range(0, count).Select(_ => (float)random.Next(kinds))];
        float[] sorted = [.. values.Order()];

        for (var rank = 0; rank < count; rank++)
            Assert.Equal(sorted[rank], Ranked.At((float[])values.Clone(), rank));
    }
}
