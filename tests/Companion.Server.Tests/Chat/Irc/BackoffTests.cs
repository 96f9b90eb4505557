using Companion.Server.Chat.Irc;

namespace Companion.Server.Tests.Chat.Irc;

public sealed class BackoffTests
{
    [Fact]
    public void The_wait_is_anything_up_to_a_limit_that_doubles()
    {
        var most = new TimeSpan[10];
        for (var seed = 0; seed < 200; seed++)
        {
            var backoff = new Backoff(new Random(seed));
            for (var time = 0; time < most.Length; time++)
                most[time] = TimeSpan.FromTicks(Math.Max(most[time].Ticks, backoff.Next(TimeSpan.Zero).Ticks));
        }

        double[] limits = [2, 4, 8, 16, 32, 64, 120, 120, 120, 120];
        Assert.All(most.Zip(limits), pair => Assert.InRange(pair.First.TotalSeconds, pair.Second * 0.9, pair.Second));
    }

    [Theory]
    [InlineData(0, false)]
    [InlineData(59, false)]
    [InlineData(60, true)]
    public void Only_a_connection_that_held_for_a_minute_begins_anew(int heldSeconds, bool beginsAnew)
    {
        var waits = new List<TimeSpan>();
        for (var seed = 0; seed < 100; seed++)
        {
            var backoff = new Backoff(new Random(seed));
            for (var time = 0; time < 8; time++)
                backoff.Next(TimeSpan.Zero);
            waits.Add(backoff.Next(TimeSpan.FromSeconds(heldSeconds)));
        }

        Assert.Equal(beginsAnew, waits.Max() <= Backoff.First);
    }
}
