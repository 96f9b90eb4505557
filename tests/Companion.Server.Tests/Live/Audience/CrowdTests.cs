using System.Net;
using Companion.Server.Live.Audience;
using Companion.Server.Live.Audience.Door;
using Companion.Server.Live.Transport;
using Companion.Server.Settings;
using Microsoft.Extensions.Time.Testing;

namespace Companion.Server.Tests.Live.Audience;

/// <summary>Who is there, and how much each address may.</summary>
public sealed class CrowdTests
{
    private readonly FakeTimeProvider _clock = new();

    [Fact]
    public void A_place_that_is_left_is_free_again_and_left_only_once()
    {
        var crowd = Of(new() { MostViewers = 1 });
        var place = Enter(crowd, "192.0.2.1").Place;
        Assert.Equal(AudienceSentences.Full, Enter(crowd, "192.0.2.2").Refusal);

        place!.Dispose();
        place.Dispose();

        Assert.Equal(0, crowd.Present);
        Assert.Null(Enter(crowd, "192.0.2.2").Refusal);
    }

    [Fact]
    public void Each_address_has_its_own_places()
    {
        var crowd = Of(new() { MostPerAddress = 1 });
        Assert.Null(Enter(crowd, "192.0.2.1").Refusal);
        Assert.Equal(AudienceSentences.TooManyFromHere, Enter(crowd, "192.0.2.1").Refusal);
        Assert.Null(Enter(crowd, "192.0.2.2").Refusal);
    }

    [Theory]
    [InlineData("2001:db8:1:2::1", "2001:db8:1:2:ffff::9", true)]
    [InlineData("2001:db8:1:2::1", "2001:db8:1:3::1", false)]
    [InlineData("192.0.2.1", "::ffff:192.0.2.1", true)]
    public void Addresses_that_one_household_has_count_as_one(string one, string other, bool isSame)
    {
        var crowd = Of(new() { MostPerAddress = 1 });
        Enter(crowd, one);

        Assert.Equal(isSame, Enter(crowd, other).Refusal is not null);
    }

    [Fact]
    public void Whoever_comes_and_goes_without_end_must_wait_and_others_need_not()
    {
        var crowd = Of(new() { MostPerAddress = 10 });
        for (var visit = 0; visit < 50; visit++)
            Enter(crowd, "192.0.2.1").Place?.Dispose();

        Assert.Equal(AudienceSentences.TooManyFromHere, Enter(crowd, "192.0.2.1").Refusal);
        Assert.Null(Enter(crowd, "192.0.2.2").Refusal);
        _clock.Advance(TimeSpan.FromSeconds(1));
        Assert.Null(Enter(crowd, "192.0.2.1").Refusal);
    }

    [Fact]
    public void A_place_may_ask_a_few_times_at_once_and_then_every_two_seconds()
    {
        var place = Enter(Of(new()), "192.0.2.1").Place!;

        Assert.Equal(8, Enumerable.Range(0, 20).Count(_ => place.MayAsk()));
        _clock.Advance(TimeSpan.FromSeconds(1.9));
        Assert.False(place.MayAsk());
        _clock.Advance(TimeSpan.FromSeconds(0.1));
        Assert.True(place.MayAsk());
    }

    [Fact]
    public void Those_who_are_gone_are_forgotten_when_many_have_come_and_those_who_are_there_are_not()
    {
        var crowd = Of(new() { MostPerAddress = 1, MostViewers = 10 });
        Enter(crowd, "192.0.2.1");
        for (var visitor = 0; visitor < 5000; visitor++)
            Enter(crowd, $"198.51.{visitor / 250}.{visitor % 250}").Place?.Dispose();

        Assert.Equal(AudienceSentences.TooManyFromHere, Enter(crowd, "192.0.2.1").Refusal);
        Assert.Equal(1, crowd.Present);
    }

    [Fact]
    public void A_bucket_gives_what_is_left_and_fills_up_no_further_than_its_brim()
    {
        var bucket = new TokenBucket(perSecond: 10, burst: 100, _clock);
        Assert.True(bucket.Take(100));
        Assert.False(bucket.Take(1));

        _clock.Advance(TimeSpan.FromSeconds(2));
        Assert.False(bucket.Take(21));
        Assert.True(bucket.Take(20));

        _clock.Advance(TimeSpan.FromHours(1));
        Assert.False(bucket.Take(101));
        Assert.True(bucket.Take(100));
    }

    private Crowd Of(AudienceSettings settings) => new(new() { Audience = settings }, _clock);

    private static (string? Refusal, Place? Place) Enter(Crowd crowd, string address)
    {
        var refusal = crowd.Enter(IPAddress.Parse(address), stays: true, hasKey: false, out var place);
        return (refusal, place);
    }
}
