using Companion.Server.Chat;
using CsCheck;
using Microsoft.Extensions.Time.Testing;

namespace Companion.Server.Tests.Chat;

public sealed class PaceTests
{
    [Fact]
    public void Five_lines_go_at_once_and_then_one_every_two_seconds()
    {
        // RFC 1459, section 8.10: two seconds a message, at most ten ahead.
        var clock = new FakeTimeProvider();
        var pace = new Pace(TimeSpan.FromSeconds(2), 5, clock);

        Assert.Equal([0, 0, 0, 0, 0, 2, 4], Enumerable.Range(0, 7).Select(_ => pace.Take().TotalSeconds));
        clock.Advance(TimeSpan.FromSeconds(4));
        Assert.Equal(2, pace.Take().TotalSeconds);
        clock.Advance(TimeSpan.FromHours(1));
        Assert.Equal([0, 0, 0, 0, 0, 2], Enumerable.Range(0, 6).Select(_ => pace.Take().TotalSeconds));
    }

    [Fact]
    public void What_would_have_to_wait_can_be_refused_instead_and_is_not_counted()
    {
        var clock = new FakeTimeProvider();
        var pace = new Pace(TimeSpan.FromSeconds(2), 2, clock);

        Assert.Equal([true, true, false, false], Enumerable.Range(0, 4).Select(_ => pace.TryTake()));
        clock.Advance(TimeSpan.FromSeconds(2));
        Assert.Equal([true, false], Enumerable.Range(0, 2).Select(_ => pace.TryTake()));
    }

    [Fact]
    public void In_no_thirty_seconds_go_more_than_twenty_lines() => Gen.Int[0, 40].Array[200].Sample(rests =>
    {
        // 5 + 30 / 2 = 20: what gateways of large chats allow.
        var clock = new FakeTimeProvider();
        var pace = new Pace(TimeSpan.FromSeconds(2), 5, clock);
        List<DateTimeOffset> sent = [];
        foreach (var rest in rests)
        {
            clock.Advance(TimeSpan.FromSeconds(rest / 10.0));
            clock.Advance(pace.Take());
            sent.Add(clock.GetUtcNow());
        }

        return sent.TrueForAll(from => sent.Count(at => at >= from && at < from + TimeSpan.FromSeconds(30)) <= 20);
    });
}
