using Companion.Server.Chat.Irc.Lines;

namespace Companion.Server.Tests.Chat.Irc.Lines;

/// <summary>Source: IRCv3, Message Tags, "Escaping values".</summary>
public sealed class TagTextTests
{
    [Theory]
    [InlineData(";", @"\:")]
    [InlineData(" ", @"\s")]
    [InlineData(@"\", @"\\")]
    [InlineData("\r", @"\r")]
    [InlineData("\n", @"\n")]
    [InlineData("a=b:c", "a=b:c")]
    public void Five_characters_are_escaped(string value, string text)
    {
        Assert.Equal(text, TagText.Escape(value));
        Assert.Equal(value, TagText.Unescape(text));
    }

    [Theory]
    [InlineData(@"test\", "test")]
    [InlineData(@"\b", "b")]
    [InlineData(@"\\s", @"\s")]
    [InlineData(@"\", "")]
    public void A_backslash_that_escapes_nothing_vanishes(string text, string value) => Assert.Equal(value, TagText.Unescape(text));

    [Fact]
    public void Of_a_key_that_stands_there_twice_the_last_value_counts() =>
        Assert.Equal("2", IrcFormat.Read("@k=1;k=2 PING x")!.Tags["k"]);

    [Fact]
    public void Line_ends_in_a_value_are_data() => Assert.Equal("a\r\nQUIT", IrcFormat.Read(@"@k=a\r\nQUIT PING x")!.Tags["k"]);
}
