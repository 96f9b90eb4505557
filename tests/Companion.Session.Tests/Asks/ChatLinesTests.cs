using System.Text;
using Companion.Session.Asks.Answers;

namespace Companion.Session.Tests.Asks;

public sealed class ChatLinesTests
{
    [Fact]
    public void A_text_that_fits_stays_one_line()
    {
        Assert.Equal(["Look at block 1"], ChatLines.Of("Look at block 1"));
        Assert.Equal([new string('x', ChatLines.Octets)], ChatLines.Of(new string('x', ChatLines.Octets)));
        Assert.Empty(ChatLines.Of(""));
    }

    [Theory]
    [InlineData("word ")]
    [InlineData("wörter→ ")]
    [InlineData("ü")]
    [InlineData("\U0001F9E9")]
    public void A_longer_one_goes_on_in_the_next_line_and_nothing_of_it_is_lost(string part)
    {
        var text = string.Concat(Enumerable.Repeat(part, 300)).Trim();

        var lines = ChatLines.Of(text);

        Assert.All(lines, line => Assert.InRange(Encoding.UTF8.GetByteCount(line), 1, ChatLines.Octets));
        Assert.Equal(text, string.Join(part.EndsWith(' ') ? " " : "", lines));
    }
}
