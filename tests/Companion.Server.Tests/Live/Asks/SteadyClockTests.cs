using Companion.Server.Live.Asks;

namespace Companion.Server.Tests.Live.Asks;

public sealed class SteadyClockTests
{
    [Fact]
    public void A_clock_that_is_set_back_or_forward_makes_no_time_pass()
    {
        var wall = new WallClock();
        var steady = new SteadyClock(wall);
        var start = steady.Now;

        wall.Hands -= TimeSpan.FromHours(1);
        Assert.Equal(start, steady.Now);

        wall.Hands += TimeSpan.FromDays(1);
        wall.Passed += TimeSpan.FromSeconds(5);
        Assert.Equal(start.AddSeconds(5), steady.Now);
    }

    // Its hands can be set; what has passed goes on beside them.
    private sealed class WallClock : TimeProvider
    {
        public DateTimeOffset Hands { get; set; } = DateTimeOffset.UnixEpoch.AddYears(50);

        public TimeSpan Passed { get; set; }

        public override long TimestampFrequency => TimeSpan.TicksPerSecond;

        public override DateTimeOffset GetUtcNow() => Hands;

        public override long GetTimestamp() => Passed.Ticks;
    }
}
