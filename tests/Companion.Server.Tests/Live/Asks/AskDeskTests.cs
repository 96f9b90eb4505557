using Companion.Engine;
using Companion.Engine.Proofs;
using Companion.Server.Live.Asks;
using Companion.Session.Asks;
using Companion.Session.Asks.Answers;
using Companion.Session.Commands;

namespace Companion.Server.Tests.Live.Asks;

/// <summary>Asks come in by any way, are answered when they are due, and hold nothing up.</summary>
public sealed class AskDeskTests
{
    private static readonly Way Chat = new("chat", IsShared: true);
    private static readonly Way Page = new("page", IsShared: false);

    [Fact]
    public async Task Those_who_ask_the_same_get_one_answer_when_it_is_due()
    {
        await using var hall = await Hall.Open();
        var ann = hall.Desk.Ask(Chat, "ann-account", "ann", "!hint");
        var bob = hall.Desk.Ask(Chat, "bob-account", "bob", "!hint");
        await hall.Handled();
        hall.Clock.Advance(TimeSpan.FromSeconds(1.9));
        await hall.Handled();
        Assert.False(ann.IsCompleted);

        hall.Clock.Advance(TimeSpan.FromSeconds(0.1));

        Assert.Equal(["@ann, @bob: Look at block 1"], (await Hall.Within(ann)).Lines);
        var second = await Hall.Within(bob);
        Assert.Empty(second.Lines);
        Assert.IsType<HintGiven>(second.Answer);
    }

    [Fact]
    public async Task A_page_is_answered_at_once_and_in_types()
    {
        await using var hall = await Hall.Open();

        var reply = await Hall.Within(hall.Desk.Ask(Page, "connection", "", new AskWhy(Cell.Parse("r1c1"))));

        Assert.Equal(new WhyOpen(Cell.Parse("r1c1")), reply.Answer);
    }

    [Theory]
    [InlineData("good evening")]
    [InlineData("!call r1c1 5")]
    [InlineData("!delay kite")]
    public async Task What_has_no_answer_ends_at_once(string line)
    {
        await using var hall = await Hall.Open();

        Assert.Equal(AskReply.Nothing, await Hall.Within(hall.Desk.Ask(Chat, "ann", "ann", line)));
    }

    [Fact]
    public async Task An_answer_is_about_the_board_of_some_time_ago()
    {
        await using var hall = await Hall.Open(new() { DelaySeconds = 15 });
        hall.Clock.Advance(TimeSpan.FromSeconds(15));
        hall.Do(new PlaceDigit(Cell.Parse("r2c2"), Digit.Of(6)));
        hall.Clock.Advance(TimeSpan.FromSeconds(14));
        Assert.IsType<WhyOpen>((await Hall.Within(hall.Desk.Ask(Page, "ann", "ann", "!why r2c2"))).Answer);

        hall.Clock.Advance(TimeSpan.FromSeconds(6));
        Assert.IsType<WhyFollows>((await Hall.Within(hall.Desk.Ask(Page, "ann", "ann", "!why r2c2"))).Answer);
    }

    [Fact]
    public async Task A_flood_is_not_answered_beyond_what_there_is_room_for_and_the_desk_goes_on()
    {
        await using var hall = await Hall.Open();
        var flood = Enumerable.Range(0, 5000).Select(viewer => hall.Desk.Ask(Page, $"{viewer}", "", new AskLeft())).ToList();

        var replies = await Task.WhenAll(flood.Select(Hall.Within));
        Assert.Contains(replies, reply => reply.Answer is DigitsLeft);

        Assert.IsType<DigitsLeft>((await Hall.Within(hall.Desk.Ask(Page, "late", "", new AskLeft()))).Answer);
    }

    [Fact]
    public async Task At_the_end_of_a_show_whoever_waits_is_let_go_and_all_are_strangers_again()
    {
        await using var hall = await Hall.Open();
        await Hall.Within(hall.Desk.Ask(Page, "ann", "ann", "!hint 2"));
        var waits = hall.Desk.Ask(Chat, "bob", "bob", "!hint");
        await hall.Handled();

        hall.Do(new EndShow());

        Assert.Equal(AskReply.Nothing, await Hall.Within(waits));
        var again = await Hall.Within(hall.Desk.Ask(Page, "ann", "ann", "!hint"));
        Assert.Equal(Grade.Where, ((HintGiven)again.Answer!).Hint.Grade);
    }

    [Fact]
    public async Task When_the_server_stops_nobody_is_left_waiting()
    {
        var hall = await Hall.Open();
        var waits = hall.Desk.Ask(Chat, "bob", "bob", "!hint");
        await hall.DisposeAsync();

        Assert.Equal(AskReply.Nothing, await waits.WaitAsync(Hall.Patience, TestContext.Current.CancellationToken));
        Assert.Equal(AskReply.Nothing, await hall.Desk.Ask(Chat, "ann", "ann", "!hint"));
    }
}
