using Companion.Server.Chat.Irc.Lines;
using CsCheck;

namespace Companion.Server.Tests.Chat.Irc.Lines;

public sealed class IrcFormatTests
{
    private static readonly string[] Fronts = ["", "@", ":", @"@a=\", "PRIVMSG #a :"];

    [Fact]
    public void A_line_is_tags_source_command_and_parameters()
    {
        // The worked example of IRCv3, Message Tags.
        var message = IrcFormat.Read("@aaa=bbb;ccc;example.com/ddd=eee :nick!ident@host.com PRIVMSG me :Hello")!;

        Assert.Equal("bbb", message.Tags["aaa"]);
        Assert.Equal("", message.Tags["ccc"]);
        Assert.Equal("eee", message.Tags["example.com/ddd"]);
        Assert.Equal(new IrcSource("nick", "ident", "host.com"), message.Source);
        Assert.Equal("PRIVMSG", message.Command);
        Assert.Equal(["me", "Hello"], message.Parameters);
    }

    [Theory]
    // RFC 2812, sections 3.2.1, 3.3.1, 3.2.8 and 5.1.
    [InlineData("JOIN #foo,#bar fubar,foobar", "JOIN", "#foo,#bar|fubar,foobar")]
    [InlineData(":Angel!wings@irc.org PRIVMSG Wiz :Are you receiving this message ?", "PRIVMSG", "Wiz|Are you receiving this message ?")]
    [InlineData("KICK #Finnish John :Speaking English", "KICK", "#Finnish|John|Speaking English")]
    [InlineData(":irc.example 001 me :Welcome", "001", "me|Welcome")]
    // Forgiving where it does no harm: spaces, small letters, empty and colon-led last parameters.
    [InlineData("  ping   one  ", "PING", "one")]
    [InlineData(":irc.example  CAP  *  LS :sasl ", "CAP", "*|LS|sasl ")]
    [InlineData("TOPIC #a :", "TOPIC", "#a|")]
    [InlineData("TOPIC #a ::)", "TOPIC", "#a|:)")]
    [InlineData("QUIT", "QUIT", null)]
    // The fifteenth is all that remains, with a colon or without.
    [InlineData("X 1 2 3 4 5 6 7 8 9 10 11 12 13 14 15 16", "X", "1|2|3|4|5|6|7|8|9|10|11|12|13|14|15 16")]
    [InlineData("X 1 2 3 4 5 6 7 8 9 10 11 12 13 14 :15 16", "X", "1|2|3|4|5|6|7|8|9|10|11|12|13|14|15 16")]
    public void Command_and_parameters_are_read(string line, string command, string? parameters)
    {
        var message = IrcFormat.Read(line)!;

        Assert.Equal(command, message.Command);
        Assert.Equal(parameters?.Split('|') ?? [], message.Parameters);
    }

    [Theory]
    [InlineData("")]
    [InlineData("   ")]
    [InlineData("@tag")]
    [InlineData("@")]
    [InlineData(":")]
    [InlineData(":source")]
    [InlineData("@tag :source")]
    [InlineData("12 a")]
    [InlineData("1234 a")]
    [InlineData("PRIV-MSG a b")]
    [InlineData("PRIVMSG a :b\0c")]
    [InlineData("PRIVMSG a :b\rQUIT")]
    [InlineData("\uFFFD\uFFFD")]
    public void What_holds_no_command_is_no_message(string line) => Assert.Null(IrcFormat.Read(line));

    [Fact]
    public void Reading_what_was_written_gives_the_same_message() => Messages.Sample(
        message =>
        {
            var read = IrcFormat.Read(message.ToString())!;

            Assert.Equal(message.Tags, read.Tags);
            Assert.Equal(message.Source, read.Source);
            Assert.Equal(message.Command, read.Command);
            Assert.Equal(message.Parameters, read.Parameters);
        },
        iter: 2000);

    [Fact]
    public void No_text_at_all_stops_the_reader() => Gen.Select(Gen.Int[0, 4], Gen.String[0, 60]).Sample(
        (front, rest) => (IrcFormat.Read(Fronts[front] + rest)?.Parameters.Length ?? 0) <= IrcMessage.MostParameters,
        iter: 5000);

    [Theory]
    [InlineData("a b", "c")]
    [InlineData(":a", "c")]
    [InlineData("", "c")]
    [InlineData("a", "c\r\nQUIT")]
    [InlineData("a", "c\nQUIT")]
    [InlineData("a", "c\0")]
    public void Parameters_that_would_make_another_line_are_refused(string first, string second) =>
        Assert.Throws<ArgumentException>(() => IrcMessage.Of("PRIVMSG", first, second).ToString());

    [Fact]
    public void A_line_of_512_octets_is_written_and_a_longer_one_refused()
    {
        var fits = new string('x', LineBudget.Line - "PRIVMSG #grid ".Length);

        Assert.Equal(LineBudget.Line, IrcMessage.Of("PRIVMSG", "#grid", fits).ToString().Length);
        Assert.Throws<ArgumentException>(() => IrcMessage.Of("PRIVMSG", "#grid", fits + "x").ToString());
        Assert.Throws<ArgumentException>(() => IrcMessage.Of("PRIVMSG", "#grid", fits[..^1] + "é").ToString());
    }

    private static Gen<IrcMessage> Messages
    {
        get
        {
            var word = Gen.String[Gen.OneOf(Gen.Char['!', '9'], Gen.Char['a', 'z'], Gen.Char["é中\x02"]), 1, 12];
            var middle = word.Where(text => text[0] != ':');
            var last = Gen.String[Gen.OneOf(Gen.Char[' ', '~'], Gen.Char["é中\x03"]), 0, 40];
            var name = Gen.String[Gen.Char['a', 'z'], 1, 8];
            var value = Gen.String[Gen.OneOf(Gen.Char[' ', '~'], Gen.Char["\r\n\\;é"]), 0, 20];
            var source = Gen.OneOf(
                Gen.Const((IrcSource?)null), name.Select(nick => (IrcSource?)new IrcSource(nick)), name.Select(nick => (IrcSource?)new IrcSource(nick, "u", "h.example")));
            return Gen.Select(name, middle.List[0, 14], last, Gen.Dictionary(name, value)[0, 4], source, (command, parameters, end, tags, from) =>
                new IrcMessage(command.ToUpperInvariant(), [.. parameters, end])
                {
                    Tags = IrcMessage.Of("X").Tags.AddRange(tags),
                    Source = from,
                });
        }
    }
}
