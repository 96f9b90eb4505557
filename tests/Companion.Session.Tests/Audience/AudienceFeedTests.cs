using Companion.Engine;
using Companion.Engine.Proofs;
using Companion.Session.Asks.Delays;
using Companion.Session.Audience;
using Companion.Session.Commands;

namespace Companion.Session.Tests.Audience;

/// <summary>What viewers' pages are shown, and when.</summary>
public sealed class AudienceFeedTests
{
    private static readonly PlaceDigit Six = new(Cell.Parse("r2c2"), Digit.Of(6));

    [Fact]
    public void Nothing_is_shown_until_the_delay_reaches_what_was_shown_first()
    {
        var show = new AudienceShow(Puzzles.Easy);

        Assert.Null(show.Wait(14.999).View.Board);
        Assert.Null(show.View.Credit);

        Assert.Equal(Puzzles.Easy.Replace("\n", "", StringComparison.Ordinal), show.Wait(0.001).View.Board?.Givens);
        Assert.Equal(new("Title", "Setter", ""), show.View.Credit);
    }

    [Fact]
    public void An_entry_comes_into_sight_after_the_delay_and_its_undo_as_late()
    {
        var show = new AudienceShow(Puzzles.Easy).Wait(20).Do(Six).Wait(3).Do(new Undo());

        Assert.DoesNotContain('6', show.Wait(11.999).View.Board!.Placed);
        Assert.Contains('6', show.Wait(0.001).View.Board!.Placed);
        Assert.Contains('6', show.Wait(2.999).View.Board!.Placed);
        Assert.DoesNotContain('6', show.Wait(0.001).View.Board!.Placed);
    }

    [Fact]
    public void It_says_when_it_will_change_next()
    {
        var show = new AudienceShow(Puzzles.Easy);
        Assert.Equal(show.Now.AddSeconds(15), show.ChangesAt);

        Assert.Null(show.Wait(20).ChangesAt);

        Assert.Equal(show.Now.AddSeconds(15), show.Do(Six).ChangesAt);
        Assert.Equal(show.Now.AddSeconds(15), show.Wait(5).Do(new Undo()).Wait(-5).ChangesAt);
    }

    [Fact]
    public void A_view_that_differs_has_the_next_number_and_one_that_does_not_is_the_same()
    {
        var show = new AudienceShow(Puzzles.Easy).Wait(15);
        var first = show.View;

        Assert.Same(first, show.Do(new AllowCoHostOnAir(true)).Wait(60).View);
        Assert.Equal(first.Sequence + 1, show.Do(Six).Wait(15).View.Sequence);
    }

    [Theory]
    [InlineData(AudienceDoor.Closed, false)]
    [InlineData(AudienceDoor.ByLink, true)]
    [InlineData(AudienceDoor.Open, true)]
    public void The_door_holds_at_once_and_behind_a_closed_one_there_is_no_board(AudienceDoor door, bool hasBoard)
    {
        var show = new AudienceShow(Puzzles.Easy).Wait(15).Do(new SetAudienceDoor(door));

        Assert.Equal(door, show.View.Door);
        Assert.Equal(hasBoard, show.View.Board is not null);
        Assert.Equal(hasBoard, show.View.Credit is not null);
    }

    [Fact]
    public void A_longer_delay_takes_back_what_is_not_to_be_seen_yet()
    {
        var show = new AudienceShow(Puzzles.Easy).Wait(60).Do(Six).Wait(20);
        Assert.Contains('6', show.View.Board!.Placed);

        Assert.DoesNotContain('6', show.Do(new SetDelay(Delay.OfSeconds(30))).View.Board!.Placed);
        Assert.Contains('6', show.Wait(10).View.Board!.Placed);
        Assert.Equal(30, show.View.DelaySeconds);
    }

    [Fact]
    public void Viewers_see_how_far_they_may_ask_and_whether_it_is_quiet_on_the_picture_that_they_see()
    {
        var show = new AudienceShow(Puzzles.Easy).Wait(15).Do(new LimitAsks(new(Open: true, Grade.What, QuietOnAir: true)));
        Assert.Equal(new(true, Grade.What, true), show.View.Asks);

        show.Do(new StandBy(show.Session.Scan().Open[0].Deduction), new NextGrade());

        Assert.False(show.Wait(14).View.IsQuiet);
        Assert.True(show.Wait(1).View.IsQuiet);
    }

    [Theory]
    [InlineData(7)]
    [InlineData(-1)]
    public void A_door_of_no_kind_is_refused(int door) => Assert.Equal(
        "The audience's page is closed, open by its link, or open: choose one of them.",
        PlayedSession.Of(Puzzles.Easy).Refused(new SetAudienceDoor((AudienceDoor)door)));
}
