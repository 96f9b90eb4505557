using System.Text;
using Companion.Server.Chat;
using Companion.Server.Chat.Webhook;
using Microsoft.AspNetCore.Http;
using Microsoft.Extensions.Time.Testing;

namespace Companion.Server.Tests.Chat.Webhook;

public sealed class SignatureTests
{
    private static readonly Secret Key = new("0123456789abcdef0123456789abcdef");
    private static readonly byte[] Body = "{}"u8.ToArray();

    private readonly FakeTimeProvider _clock = new(new(2025, 1, 1, 0, 0, 0, TimeSpan.Zero));

    [Fact]
    public void It_is_the_HMAC_of_time_point_and_body() => Assert.Equal(
        // printf '1735689600.{}' | openssl dgst -sha256 -hmac 0123456789abcdef0123456789abcdef
        "5c1d2862dd93165e3df3a81ad9599e7ea2446ea4803c5f56a0ff64e3662173bb",
        Convert.ToHexStringLower(Signature.Of(Key, "1735689600", Body)));

    [Fact]
    public void A_fresh_one_is_let_in_once()
    {
        var check = new SignatureCheck(Key, _clock);

        Assert.Null(Look(check, _clock.GetUtcNow()));
        Assert.Equal(StatusCodes.Status409Conflict, Look(check, _clock.GetUtcNow())?.Status);
        Assert.Null(Look(check, _clock.GetUtcNow().AddSeconds(1)));
    }

    [Theory]
    [InlineData(-301, false)]
    [InlineData(-300, true)]
    [InlineData(300, true)]
    [InlineData(301, false)]
    public void A_clock_may_be_five_minutes_off(int seconds, bool isLetIn) =>
        Assert.Equal(isLetIn ? null : Refusals.Stale, Look(new(Key, _clock), _clock.GetUtcNow().AddSeconds(seconds))?.Sentence);

    [Theory]
    [InlineData("")]
    [InlineData("-1")]
    [InlineData("1.5")]
    [InlineData("now")]
    [InlineData("99999999999999999999")]
    [InlineData(" 1735689600")]
    public void A_time_that_is_none_is_not_let_in(string time) => Assert.Equal(
        Refusals.BadSignature,
        new SignatureCheck(Key, _clock).Look(time, Convert.ToHexString(Signature.Of(Key, time, Body)), Body)?.Sentence);

    [Fact]
    public void Whatever_else_is_changed_it_is_not_let_in()
    {
        var time = Signature.Text(_clock.GetUtcNow());
        var good = Convert.ToHexStringLower(Signature.Of(Key, time, Body));
        (string Time, string Signature, byte[] Body)[] spoilt =
        [
            (time, "", Body),
            (time, good[..^2], Body),
            (time, good + "00", Body),
            (time, "zz" + good[2..], Body),
            (time, (good[0] == '0' ? '1' : '0') + good[1..], Body),
            (time, good, "{ }"u8.ToArray()),
            (Signature.Text(_clock.GetUtcNow().AddSeconds(1)), good, Body),
            (time, Convert.ToHexString(Signature.Of(new("another0another0another0another0"), time, Body)), Body),
        ];
        var check = new SignatureCheck(Key, _clock);

        Assert.All(spoilt, each => Assert.Equal(Refusals.BadSignature, check.Look(each.Time, each.Signature, each.Body)?.Sentence));
        Assert.Null(check.Look(time, good.ToUpperInvariant(), Body));
    }

    [Fact]
    public void Too_many_are_not_let_in_and_none_without_the_secret_counts()
    {
        var check = new SignatureCheck(Key, _clock);
        for (var guess = 0; guess < 1000; guess++)
            check.Look(Signature.Text(_clock.GetUtcNow()), new string('0', 64), Encoding.UTF8.GetBytes($"{guess}"));

        var refused = Enumerable.Range(0, 150).Select(number => Look(check, _clock.GetUtcNow(), $"{number}")).ToList();
        Assert.Equal(SignatureCheck.Burst, refused.Count(refusal => refusal is null));
        Assert.All(refused.Skip(SignatureCheck.Burst), refusal => Assert.Equal(StatusCodes.Status429TooManyRequests, refusal?.Status));
        _clock.Advance(TimeSpan.FromSeconds(1));
        Assert.Equal(
            SignatureCheck.PerSecond, Enumerable.Range(0, 50).Count(number => Look(check, _clock.GetUtcNow(), $"later {number}") is null));
    }

    private static SignatureCheck.Refusal? Look(SignatureCheck check, DateTimeOffset time, string body = "{}")
    {
        var octets = Encoding.UTF8.GetBytes(body);
        return check.Look(Signature.Text(time), Convert.ToHexStringLower(Signature.Of(Key, Signature.Text(time), octets)), octets);
    }
}
