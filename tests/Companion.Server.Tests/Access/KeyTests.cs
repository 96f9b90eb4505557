using Companion.Server.Access;

namespace Companion.Server.Tests.Access;

public sealed class KeyTests
{
    [Fact]
    public void A_key_is_43_characters_of_base64url_and_no_two_are_equal()
    {
        var keys = Enumerable.Range(0, 100).Select(_ => Key.Make().Reveal()).ToList();

        Assert.All(keys, key => Assert.Matches("^[A-Za-z0-9_-]{43}$", key)); // 32 bytes, RFC 4648 section 5
        Assert.Distinct(keys);
    }

    [Fact]
    public void A_key_is_read_as_it_was_written()
    {
        var key = Key.Make();

        Assert.True(Key.Read(key.Reveal())!.Matches(key));
        Assert.False(Key.Make().Matches(key));
    }

    [Theory]
    [InlineData(null)]
    [InlineData("")]
    [InlineData("presenter")]
    [InlineData("AAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAA")] // 42
    [InlineData("AAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAA")] // 44
    [InlineData("AAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAA+/")]
    [InlineData("AAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAA  A")]
    public void What_is_no_key_is_not_read(string? text) => Assert.Null(Key.Read(text));

    [Fact]
    public void A_key_does_not_print_itself()
    {
        var key = Key.Make();

        Assert.Equal("(key)", key.ToString());
        Assert.DoesNotContain(key.Reveal(), $"{key}", StringComparison.Ordinal);
    }
}
