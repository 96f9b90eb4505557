using Companion.Server.Chat.Irc.Lines;

namespace Companion.Server.Tests.Chat.Irc.Lines;

public sealed class CasemappingTests
{
    [Theory]
    // RFC 1459, section 2.2: {}| are the small ones of []\; servers take ^ for that of ~ as well.
    [InlineData("rfc1459", @"Nick[]\~A", "nick{}|^a")]
    [InlineData("rfc1459-strict", @"Nick[]\~A", "nick{}|~a")]
    [InlineData("ascii", @"Nick[]\~A", @"nick[]\~a")]
    [InlineData("unheard-of", @"Nick[]\~A", @"nick[]\~a")]
    [InlineData("rfc1459", "ÄÖ", "ÄÖ")]
    public void Names_fold_as_the_server_says(string mapping, string name, string folded) =>
        Assert.Equal(folded, Casemapping.Named(mapping).Fold(name));

    [Fact]
    public void Two_writings_of_a_name_are_the_same() => Assert.True(Casemapping.Rfc1459.AreSame("Bot[1]", "bOT{1}"));
}
