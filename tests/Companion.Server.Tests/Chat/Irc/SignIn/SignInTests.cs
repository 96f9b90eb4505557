using Companion.Server.Chat;
using Companion.Server.Chat.Irc;
using Companion.Server.Chat.Irc.SignIn;

namespace Companion.Server.Tests.Chat.Irc.SignIn;

public sealed class SignInTests
{
    [Fact]
    public void Capabilities_are_asked_for_before_the_nick_and_ended_before_the_welcome()
    {
        var talker = new Talker();

        Assert.Equal(["CAP LS 302", "NICK hintbot", "USER hintbot 0 * :A companion for this broadcast"], talker.Begun);
        Assert.Equal([], talker.Answers(":s CAP * LS * :multi-prefix account-tag sasl=PLAIN,EXTERNAL "));
        Assert.Equal(
            ["CAP REQ account-tag", "CAP REQ server-time", "CAP REQ message-tags"],
            talker.Answers(":s CAP * LS :batch server-time message-tags "));
        Assert.Equal([], talker.Answers(":s CAP * ACK :account-tag ", ":s CAP * NAK :server-time"));
        Assert.Equal(["CAP END"], talker.Answers(":s CAP hintbot ACK :message-tags"));
        Assert.Equal(["JOIN #grid"], talker.Answers(":s 001 hintbot :Welcome"));
    }

    [Fact]
    public void A_server_that_knows_no_capabilities_is_a_server()
    {
        var talker = new Talker();

        Assert.Equal(["JOIN #grid"], talker.Answers(":s 421 * CAP :Unknown command", ":s 001 hintbot :Welcome"));
    }

    [Fact]
    public void New_capabilities_are_taken_up_later_and_lost_ones_given_up()
    {
        var talker = Talker.InChannel();

        Assert.Equal(["CAP REQ echo-message"], talker.Answers(":s CAP hintbot NEW :echo-message batch"));
        Assert.Equal([], talker.Answers(":s CAP hintbot ACK :echo-message", ":s CAP hintbot NEW :echo-message"));
        Assert.Equal(["CAP REQ echo-message"], talker.Answers(":s CAP hintbot DEL :echo-message", ":s CAP hintbot NEW :echo-message"));
    }

    [Fact]
    public void An_account_is_signed_in_to_before_anything_else()
    {
        // The worked example of IRCv3, SASL: name jilles, password sesame.
        var talker = new Talker(account: "jilles", password: "sesame");

        Assert.Equal(["CAP REQ sasl"], talker.Answers(":s CAP * LS :sasl=PLAIN"));
        Assert.Equal(["AUTHENTICATE PLAIN"], talker.Answers(":s CAP * ACK :sasl"));
        Assert.Equal(["AUTHENTICATE amlsbGVzAGppbGxlcwBzZXNhbWU="], talker.Answers("AUTHENTICATE +"));
        Assert.Equal(["CAP END"], talker.Answers(":s 900 hintbot n!u@h jilles :You are logged in", ":s 903 hintbot :done"));
        Assert.Equal(["JOIN #grid"], talker.Answers(":s 001 hintbot :Welcome"));
    }

    [Theory]
    [InlineData(0)]
    [InlineData(1)]
    [InlineData(300)]
    [InlineData(600)]
    [InlineData(1000)]
    public void A_long_answer_goes_in_pieces_of_400_and_a_full_last_one_is_followed_by_an_empty(int passwordLength)
    {
        var pieces = SaslPlain.Answer("a", new Secret(new string('x', passwordLength))).Select(message => message[0]).ToList();

        Assert.All(pieces.SkipLast(1), piece => Assert.Equal(400, piece.Length));
        Assert.NotEqual(400, pieces[^1].Length);
        var whole = Convert.FromBase64String(string.Concat(pieces.Where(piece => piece != "+")));
        Assert.Equal($"a\0a\0{new string('x', passwordLength)}", System.Text.Encoding.UTF8.GetString(whole));
    }

    [Fact]
    public void An_answer_of_just_400_is_followed_by_an_empty_one() =>
        // 4 octets of names and 296 of password are 300, in base64 400.
        Assert.Equal([400, 1], SaslPlain.Answer("a", new Secret(new string('x', 296))).Select(message => message[0].Length));

    [Fact]
    public void Without_an_account_the_password_is_the_servers() =>
        Assert.Equal(
            ["CAP LS 302", "PASS s3cret", "NICK hintbot", "USER hintbot 0 * :A companion for this broadcast"],
            new Talker(password: "s3cret").Begun);

    public static TheoryData<string[], string, bool> Refusals => new()
    {
        { [":s CAP * LS :sasl", ":s CAP * ACK :sasl", "AUTHENTICATE +", ":s 904 * :SASL authentication failed"], Reasons.WrongAccount, true },
        { [":s CAP * LS :sasl", ":s CAP * ACK :sasl", "AUTHENTICATE +", ":s 905 * :too long"], Reasons.WrongAccount, true },
        { [":s CAP * LS :sasl", ":s CAP * ACK :sasl", "AUTHENTICATE +", ":s 902 * :nick is locked"], Reasons.WrongAccount, true },
        { [":s CAP * LS :sasl", ":s CAP * ACK :sasl", ":s 906 * :aborted"], Reasons.SignInBroken, false },
        { [":s CAP * LS :sasl=EXTERNAL"], Reasons.NoSignIn, true },
        { [":s CAP * LS :batch"], Reasons.SignInAway, false },
        { [":s CAP * LS :sasl", ":s CAP * NAK :sasl"], Reasons.SignInAway, false },
        { [":s 421 * CAP :Unknown command", ":s 001 hintbot :Welcome"], Reasons.NoSignIn, true },
        { [":s 464 * :Password incorrect"], Reasons.WrongPassword, true },
        { [":s 465 * :You are banned"], Reasons.BannedFromServer, true },
        { [":s 432 * hintbot :Erroneous nickname"], Reasons.BadNick, true },
        { ["ERROR :Closing link: (hintbot@1.2.3.4) [Registration timeout]"], Reasons.Closed, false },
    };

    [Theory]
    [MemberData(nameof(Refusals))]
    public void Who_is_not_let_in_says_why_and_stops_where_coming_again_is_of_no_use(string[] lines, string reason, bool isFinal)
    {
        var talker = new Talker(account: "jilles", password: "sesame");
        var sent = talker.Answers(lines);

        Assert.Equal(new IrcStep.End(reason, isFinal), talker.End);
        Assert.DoesNotContain("JOIN #grid", sent);
        Assert.DoesNotContain("CAP END", sent);
    }

    [Fact]
    public void A_nick_that_is_taken_is_tried_with_a_digit_and_fits_into_nine_letters()
    {
        var talker = new Talker(nick: "companion");

        Assert.Equal(["NICK companio1"], talker.Answers(":s 433 * companion :Nickname is already in use"));
        Assert.Equal(["NICK companio2"], talker.Answers(":s 433 * companio1 :Nickname is already in use"));
        Assert.Equal(["JOIN #grid"], talker.Answers(":s 001 companio2 :Welcome"));
        Assert.Equal([], talker.Answers(":s 433 companio2 companion :Nickname is already in use"));
    }

    [Fact]
    public void After_ten_nicks_it_comes_again_later()
    {
        var talker = new Talker();
        var tried = Enumerable.Range(0, 10).SelectMany(_ => talker.Answers(":s 433 * x :taken")).ToList();

        Assert.Equal(9, tried.Distinct().Count());
        Assert.Equal(new IrcStep.End(Reasons.NicksTaken, false), talker.End);
    }

    [Fact]
    public void A_ping_is_answered_before_the_welcome_too() => Assert.Equal(["PONG :a b"], new Talker().Answers("PING :a b"));
}
