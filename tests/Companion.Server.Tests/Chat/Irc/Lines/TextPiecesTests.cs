using Companion.Server.Chat.Irc.Lines;
using CsCheck;

namespace Companion.Server.Tests.Chat.Irc.Lines;

public sealed class TextPiecesTests
{
    private static readonly Gen<string> AnyText = Gen.String[
        Gen.OneOf(Gen.Char, Gen.Char[' ', '~'], Gen.Char[" /.!\x03\r\n\0\x01\u202E\uD83D\uDE00"]), 0, 600];

    [Theory]
    [InlineData("alice", "alice", "127.0.0.1", "#grid", 472)] // measured against InspIRCd 3.15
    [InlineData("hintbot", "~hintbot", "example.host", "#grid", 464)] // by arithmetic
    public void What_is_left_for_the_words_is_a_line_less_what_others_see_in_front(
        string nick, string user, string host, string channel, int octets)
    {
        Assert.Equal(octets, LineBudget.ForMessage(new(nick, user, host), channel));
        Assert.Equal(512, $":{nick}!{user}@{host} PRIVMSG {channel} :{new string('x', octets)}\r\n".Length);
    }

    [Fact]
    public void Room_for_a_long_host_is_kept_until_it_is_known() =>
        Assert.True(LineBudget.ForMessage(new("hintbot"), "#grid") <= LineBudget.ForMessage(new("hintbot", "~hintbot", new string('h', 63)), "#grid"));

    [Theory]
    [InlineData("one two three", 9, "one two|three")]
    [InlineData("one two three", 7, "one two|three")]
    [InlineData("one two three", 6, "one|two|three")]
    [InlineData("abcdefghij", 4, "abcd|efgh|ij")]
    [InlineData("ab cdefghij", 4, "ab|cdef|ghij")]
    [InlineData("ééééé", 4, "éé|éé|é")]
    [InlineData("a😀😀", 5, "a😀|😀")]
    [InlineData("a😀😀", 8, "a😀|😀")]
    [InlineData("", 4, null)]
    [InlineData("  \r\n ", 4, null)]
    [InlineData("say /quit !now", 6, "say|quit|now")]
    public void Text_is_cut_at_the_ends_of_words_and_never_inside_a_character(string text, int budget, string? pieces) =>
        Assert.Equal(pieces?.Split('|') ?? [], TextPieces.Of(text, budget));

    [Fact]
    public void No_piece_is_too_long_or_says_anything_but_text() => Gen.Select(AnyText, Gen.Int[4, 480]).Sample(
        (text, budget) => Assert.All(TextPieces.Of(text, budget), piece =>
        {
            Assert.InRange(LineBudget.Octets(piece), 1, budget);
            Assert.DoesNotContain(piece, char.IsControl);
            Assert.DoesNotContain("\uFFFD", piece, StringComparison.Ordinal);
            Assert.DoesNotContain("\u202E", piece, StringComparison.Ordinal);
            Assert.DoesNotContain(piece[0], "/.! ");
        }),
        iter: 3000);

    [Fact]
    public void Every_piece_makes_a_line_of_at_most_512_octets_for_all_who_receive_it() => AnyText.Sample(
        text =>
        {
            IrcSource self = new("hintbot", "~hintbot", "example.host");
            foreach (var piece in TextPieces.Of(text, LineBudget.ForMessage(self, "#grid")))
            {
                var line = IrcMessage.Of("PRIVMSG", "#grid", piece);
                Assert.InRange(LineBudget.Octets($"{line}\r\n"), 1, 512);
                Assert.InRange(LineBudget.Octets($":{self} PRIVMSG #grid :{piece}\r\n"), 1, 512);
                Assert.Equal(piece, IrcFormat.Read(line.ToString())!.Last);
            }
        },
        iter: 1000);

    [Fact]
    public void Nothing_but_spaces_is_lost_between_pieces() => Gen.String[Gen.OneOf(Gen.Char['a', 'z'], Gen.Char[" é中"]), 0, 300].Sample(
        text => Assert.Equal(
            text.Replace(" ", "", StringComparison.Ordinal),
            string.Concat(TextPieces.Of(text, 20)).Replace(" ", "", StringComparison.Ordinal)),
        iter: 1000);
}
