using Companion.Server.Chat;
using Companion.Server.Chat.Irc;
using Companion.Server.Chat.Irc.Lines;
using Companion.Server.Chat.Irc.Talk;

namespace Companion.Server.Tests.Chat.Irc.Talk;

public sealed class MembershipTests
{
    [Fact]
    public void It_is_connected_once_it_is_in_the_channel_and_knows_what_others_see_of_it()
    {
        var talker = Talker.InChannel();

        Assert.True(talker.Dialog.Membership.IsIn);
        Assert.Equal(new(ChatPhase.Connected, "The chat is connected: #grid on irc.example."), talker.Status);
        Assert.Equal(new IrcSource("hintbot", "~hintbot", "example.host"), talker.Dialog.Membership.Self);
    }

    [Fact]
    public void Another_ones_coming_and_going_is_not_ours()
    {
        var talker = Talker.InChannel();
        talker.Answers(":bob!b@h JOIN #grid", ":bob!b@h PART #grid", ":mod!m@h KICK #grid bob :out", ":hintbot!u@h KICK #other hintbot :out");

        Assert.True(talker.Dialog.Membership.IsIn);
        Assert.Null(talker.End);
    }

    [Fact]
    public void Sent_out_it_comes_back_after_a_pause_that_doubles()
    {
        var talker = Talker.InChannel();
        talker.Answers(":mod!m@h KICK #GRID HintBot :out");

        Assert.False(talker.Dialog.Membership.IsIn);
        Assert.Equal(
            new(ChatPhase.Connecting, "The companion was sent out of the channel: it tries again in 30 seconds."), talker.Status);
        Assert.Equal([], talker.After(TimeSpan.FromSeconds(29)));
        Assert.Equal(["JOIN #grid"], talker.After(TimeSpan.FromSeconds(1)));
        talker.Answers(":hintbot!~hintbot@example.host JOIN #grid", ":mod!m@h KICK #grid hintbot");
        Assert.Equal([], talker.After(TimeSpan.FromSeconds(59)));
        Assert.Equal(["JOIN #grid"], talker.After(TimeSpan.FromSeconds(1)));
    }

    [Theory]
    [InlineData("474", Reasons.NotAllowedIn)]
    [InlineData("473", Reasons.NotAllowedIn)]
    [InlineData("475", Reasons.NotAllowedIn)]
    [InlineData("477", Reasons.NotAllowedIn)]
    [InlineData("403", Reasons.NoSuchChannel)]
    [InlineData("476", Reasons.NoSuchChannel)]
    public void A_channel_that_refuses_us_ends_it(string numeric, string reason)
    {
        var talker = Talker.InChannel();
        talker.Answers(":mod!m@h KICK #grid hintbot", $":s {numeric} hintbot #grid :Cannot join channel");

        Assert.Equal(new IrcStep.End(reason, true), talker.End);
    }

    [Fact]
    public void A_full_channel_is_tried_again()
    {
        var talker = new Talker();
        talker.Answers(":s 001 hintbot :Welcome", ":s 471 hintbot #grid :Cannot join channel (+l)");

        Assert.Null(talker.End);
        Assert.Equal(["JOIN #grid"], talker.After(Membership.Pause));
    }

    [Fact]
    public void Our_own_new_nick_and_host_are_learnt()
    {
        var talker = Talker.InChannel();
        talker.Answers(":hintbot!~hintbot@example.host NICK hintbot2", ":s 396 hintbot2 cloak.example :is now your host");

        Assert.Equal(new IrcSource("hintbot2", "~hintbot", "cloak.example"), talker.Dialog.Membership.Self);
    }

    [Fact]
    public void It_says_that_it_is_a_program_where_the_server_has_a_mode_for_that()
    {
        var talker = Talker.InChannel();

        Assert.Equal(["MODE hintbot +B"], talker.Answers(":s 005 hintbot NICKLEN=30 BOT=B :are supported by this server"));
        Assert.Equal([], talker.Answers(":s 005 hintbot BOT=B :are supported by this server"));
    }

    [Fact]
    public void A_silent_server_is_asked_and_then_given_up()
    {
        var talker = Talker.InChannel();

        Assert.Equal([], talker.After(IdleWatch.Silence - TimeSpan.FromSeconds(1)));
        Assert.Equal(["PING companion"], talker.After(TimeSpan.FromSeconds(1)));
        talker.Answers(":s PONG s companion");
        Assert.Equal(["PING companion"], talker.After(IdleWatch.Silence));
        Assert.Null(talker.End);
        talker.After(IdleWatch.Patience);
        Assert.Equal(new IrcStep.End(Reasons.Silent, false), talker.End);
    }
}
