using Companion.Session.Asks;
using Companion.Session.Asks.Viewers;
using Companion.Session.Events;

namespace Companion.Session.Tests.Asks;

/// <summary>Of viewers nothing is kept but what the answers need, and that without their names.</summary>
public sealed class PrivacyTests
{
    private static readonly ShowSalt Salt = new(Enumerable.Range(0, ShowSalt.Length).Select(value => (byte)value).ToArray());

    [Fact]
    public void A_viewer_is_the_same_within_a_show_and_nobody_known_in_the_next()
    {
        Assert.Equal(Salt.IdOf("chat", "ann"), Salt.IdOf("chat", "ann"));
        Assert.NotEqual(Salt.IdOf("chat", "ann"), new ShowSalt(new byte[ShowSalt.Length]).IdOf("chat", "ann"));
    }

    [Theory]
    [InlineData("chat", "bob")]
    [InlineData("page", "ann")]
    [InlineData("chata", "nn")]
    public void Another_viewer_is_another(string way, string name) => Assert.NotEqual(Salt.IdOf("chat", "ann"), Salt.IdOf(way, name));

    [Fact]
    public void A_salt_has_its_length() => Assert.Throws<ArgumentException>(() => new ShowSalt(new byte[ShowSalt.Length - 1]));

    [Fact]
    public void No_event_has_a_place_for_a_viewer() => Assert.DoesNotContain(
        typeof(Event).Assembly.GetTypes().Where(type => type.BaseType == typeof(Event)).SelectMany(type => type.GetProperties()),
        member => member.PropertyType == typeof(ViewerId) || member.PropertyType == typeof(Asked) || member.PropertyType == typeof(Answered));
}
