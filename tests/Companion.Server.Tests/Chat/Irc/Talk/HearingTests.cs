using Companion.Server.Chat;

namespace Companion.Server.Tests.Chat.Irc.Talk;

public sealed class HearingTests
{
    [Fact]
    public void A_viewers_line_is_heard_with_who_what_and_when()
    {
        var talker = Talker.InChannel();
        talker.Answers("@time=2025-03-01T10:00:00.123Z;msgid=x1;account=Alice :Al[ice]!a@h PRIVMSG #GRID :\x02hint\x02  please ");

        var line = Assert.Single(talker.Heard);
        Assert.Equal(
            new ChatLine("irc", "account alice", "Al[ice]", "hint please", talker.Clock.GetUtcNow())
            {
                MessageId = "x1",
                SentAt = new DateTimeOffset(2025, 3, 1, 10, 0, 0, 123, TimeSpan.Zero),
            },
            line);
    }

    [Fact]
    public void Without_an_account_the_folded_nick_is_the_user_and_never_looks_like_an_account()
    {
        var talker = Talker.InChannel("CASEMAPPING=rfc1459");
        talker.Answers(":Al[ice]!a@h PRIVMSG #grid :one", ":AL{ICE}!a@h PRIVMSG #grid :two", "@account=al{ice} :bob!b@h PRIVMSG #grid :three");

        Assert.Equal(["nick al{ice}", "nick al{ice}", "account al{ice}"], talker.Heard.Select(line => line.UserId));
    }

    [Theory]
    [InlineData(":alice!a@h NOTICE #grid :hint")]
    [InlineData(":alice!a@h PRIVMSG #grid :\x01VERSION\x01")]
    [InlineData(":alice!a@h PRIVMSG #grid :\x01" + "ACTION waves\x01")]
    [InlineData(":alice!a@h PRIVMSG hintbot :hint")]
    [InlineData(":alice!a@h PRIVMSG #other :hint")]
    [InlineData(":hintbot!~hintbot@example.host PRIVMSG #grid :my own echo")]
    [InlineData(":HintBot!~hintbot@example.host PRIVMSG #grid :my own echo")]
    [InlineData("@+typing=active :alice!a@h TAGMSG #grid")]
    [InlineData("PRIVMSG #grid :from nobody")]
    [InlineData(":alice!a@h PRIVMSG #grid")]
    public void What_is_no_viewers_line_is_neither_heard_nor_answered(string line)
    {
        var talker = Talker.InChannel();

        Assert.Equal([], talker.Answers(line));
        Assert.Empty(talker.Heard);
    }

    [Theory]
    [InlineData("@bot :other!o@h PRIVMSG #grid :hint", true)]
    [InlineData("@inspircd.org/bot :other!o@h PRIVMSG #grid :hint", true)]
    [InlineData("@account=bot :other!o@h PRIVMSG #grid :hint", false)]
    public void A_program_is_known_by_its_tag(string line, bool isBot)
    {
        var talker = Talker.InChannel();
        talker.Answers(line);

        Assert.Equal(isBot, Assert.Single(talker.Heard).IsFromBot);
    }

    [Theory]
    [InlineData("2012-06-30T23:59:60.419Z", "2012-06-30T23:59:59.4190000+00:00")] // the leap second of IRCv3, server-time
    [InlineData("2011-10-19T16:40:51.620Z", "2011-10-19T16:40:51.6200000+00:00")]
    [InlineData("yesterday", null)]
    [InlineData("", null)]
    public void Any_time_of_the_server_is_taken_or_left(string time, string? read)
    {
        var talker = Talker.InChannel();
        talker.Answers($"@time={time} :alice!a@h PRIVMSG #grid :hint");

        Assert.Equal(read, Assert.Single(talker.Heard).SentAt?.ToString("o"));
    }

    [Fact]
    public void Nothing_a_server_says_stops_us()
    {
        var talker = Talker.InChannel();
        string[] nonsense =
        [
            "", " ", "@", ":", "@;=;;= :!@ PRIVMSG #grid :x", ":!@ PRIVMSG #grid :x", "KICK", "KICK #grid", "NICK", "JOIN", "CAP", "CAP * LS",
            "005", "001", "396 a", "474", "PING", "AUTHENTICATE", $"PING :{new string('x', 8000)}", "PING :a\0b", "PRIVMSG #grid :\uFFFD",
        ];

        Assert.Equal(["PONG :"], talker.Answers(nonsense));
        Assert.True(talker.Dialog.Membership.IsIn);
        Assert.Null(talker.End);
    }

    [Fact]
    public void A_line_does_not_print_who_wrote_it() =>
        Assert.Equal("(a line of the chat)", new ChatLine("irc", "nick alice", "alice", "hint", DateTimeOffset.UnixEpoch).ToString());
}
