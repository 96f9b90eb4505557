using Companion.Engine;
using Companion.Session.Asks.Calls;
using Companion.Session.Asks.Delays;
using Companion.Session.Commands;
using Companion.Session.Events;

namespace Companion.Session.Tests.Asks;

/// <summary>"I have found it": counted for the presenter, never confirmed to viewers.</summary>
public sealed class CallTests
{
    // Worked out with the presenter at 100 s and viewers 2 to 15 s behind.
    [Theory]
    [InlineData(60, CallStanding.First)]
    [InlineData(101.9, CallStanding.First)]
    [InlineData(102, CallStanding.Close)]
    [InlineData(114.99, CallStanding.Close)]
    [InlineData(115, CallStanding.After)]
    public void Who_was_first_is_told_as_far_as_the_delay_allows(double called, CallStanding expected) => Assert.Equal(
        expected, CallTiming.Of(At(100), At(called), new Delay(15, Least: 2, Most: 15)));

    [Fact]
    public void The_presenter_sees_how_many_named_a_cell_and_how_many_are_right()
    {
        var show = AskedShow.Of(Puzzles.Easy);
        show.Types("ann", "!call r2c2 6");
        show.Types("bob", "!call r2c2 7");
        show.Types("cy", "!call r1c1 4");

        Assert.Equal(
            [
                new(Cell.Parse("r1c1"), Viewers: 1, Named: 1, Right: 1, null, null),
                new(Cell.Parse("r2c2"), Viewers: 2, Named: 2, Right: 1, null, null),
            ],
            show.Enquiries.View.Calls.Items);
    }

    [Fact]
    public void Whoever_does_not_say_which_digit_counts_and_is_not_right_and_takes_nothing_back()
    {
        var book = new CallBook();
        book.Show(PlayedSession.Of(Puzzles.Easy).State, At(0));
        var cell = Cell.Parse("r2c2");
        book.Count(new(1), new(cell, null), At(1));
        Assert.Equal([new(cell, Viewers: 1, Named: 0, Right: 0, null, null)], book.Cells(Delay.OfSeconds(15)));

        book.Count(new(1), new(cell, Digit.Of(6)), At(2));
        book.Count(new(1), new(cell, null), At(3));

        Assert.Equal([new(cell, Viewers: 1, Named: 1, Right: 1, null, null)], book.Cells(Delay.OfSeconds(15)));
    }

    [Fact]
    public void Once_the_digit_is_placed_the_first_right_call_is_compared_with_it()
    {
        var show = AskedShow.Of(Puzzles.Easy).Do(new SetDelay(new(15, 2, 15))).Wait(60);
        show.Types("bob", "!call r2c2 7");
        show.Wait(10).Types("ann", "!call r2c2 6");
        show.Wait(40).Place("r2c2", 6).Place("r1c6", 1).Wait(14.99).Types("cy", "!call r1c6 1");

        Assert.Equal(
            [
                new(Cell.Parse("r1c6"), 1, 1, 1, CallStanding.Close, -14.99),
                new(Cell.Parse("r2c2"), 2, 2, 1, CallStanding.First, 40),
            ],
            show.Enquiries.View.Calls.Items);
    }

    // The presenter at 70 s, viewers 2 to 15 s behind: until 72 s nobody can have seen the entry.
    [Fact]
    public void Where_viewers_were_first_is_kept_as_soon_as_it_is_sure_once_and_with_a_coarse_number_alone()
    {
        var show = AskedShow.Of(Puzzles.Easy).Do(new SetDelay(new(15, 2, 15))).Wait(60);
        foreach (var (name, digit) in new[] { ("ann", 6), ("bob", 7), ("dee", 6) })
            show.Types(name, $"!call r2c2 {digit}");
        show.Wait(10).Place("r2c2", 6).Place("r1c6", 1);
        Assert.Null(show.Enquiries.FoundFirst(show.Now));

        show.Wait(1.9).Types("cy", "!call r2c2 6");
        Assert.Null(show.Enquiries.FoundFirst(show.Now));
        Assert.Equal(show.Now.AddSeconds(0.1), show.Enquiries.NextAt);

        show.Wait(0.1).Types("eve", "!call r2c2 6");
        show.Types("eve", "!call r1c6 1");
        var found = show.Enquiries.FoundFirst(show.Now);
        Assert.Equal([new(Cell.Parse("r2c2"), AtLeast: 2)], found!.Cells.Items);
        Assert.Null(show.Enquiries.FoundFirst(show.Now.AddSeconds(60)));
        Assert.Null(show.Enquiries.NextAt);

        show.Do(found);
        Assert.Equal(new CellsFoundFirst(show.Session.Log[^1].At, found.Cells), show.Session.Log[^1]);
    }

    [Fact]
    public void At_the_end_of_the_show_it_is_sure_at_once_and_after_another_puzzle_too_late()
    {
        var show = AskedShow.Of(Puzzles.Easy).Do(new SetDelay(new(15, 2, 15))).Wait(60);
        show.Types("ann", "!call r2c2 6");
        show.Place("r2c2", 6).Do(new EndShow());

        var found = show.Enquiries.FoundFirst(show.Now)!;
        Assert.Equal([new(Cell.Parse("r2c2"), AtLeast: 1)], found.Cells.Items);
        Assert.NotEmpty(show.Try(found).Events);
        show.Do(new LoadPuzzle(Puzzles.Demo, "", "", ""));
        Assert.Empty(show.Try(found).Events);
    }

    [Fact]
    public void The_last_call_of_a_viewer_counts_and_to_repeat_it_changes_nothing()
    {
        var show = AskedShow.Of(Puzzles.Easy);
        show.Types("ann", "!call r2c2 5");
        show.Wait(10).Types("ann", "!call r2c2 6");
        show.Wait(10).Types("ann", "!call r2c2 6");
        show.Wait(10).Place("r2c2", 6);

        Assert.Equal(
            new(Cell.Parse("r2c2"), 1, 1, 1, CallStanding.First, 20), Assert.Single(show.Enquiries.View.Calls));
    }

    [Fact]
    public void A_cell_that_the_viewer_can_see_filled_is_not_called()
    {
        var show = AskedShow.Of(Puzzles.Easy, AskedShow.AtOnce with { DelaySeconds = 10 }).Wait(10).Place("r2c2", 6).Wait(5);
        show.Types("ann", "!call r2c2 6");
        show.Wait(5).Types("bob", "!call r2c2 6");
        show.Types("bob", "!call r1c3 3");

        Assert.Equal(1, Assert.Single(show.Enquiries.View.Calls).Viewers);
    }

    [Fact]
    public void One_viewer_calls_no_oftener_than_the_pause_allows_but_right_after_a_hint()
    {
        var show = AskedShow.Of(Puzzles.Easy, AskedShow.AtOnce with { ViewerPauseSeconds = 5 });
        show.Types("ann", "!hint");
        show.Types("ann", "!call r2c2 6");
        show.Types("ann", "!call r1c6 1");
        show.Wait(5).Types("ann", "!call r5c2 2");

        Assert.Equal(["r2c2", "r5c2"], show.Enquiries.View.Calls.Select(calls => calls.Cell.ToString()));
    }

    [Fact]
    public void Another_puzzle_begins_a_new_book()
    {
        var show = AskedShow.Of(Puzzles.Easy);
        show.Types("ann", "!call r2c2 6");
        show.Do(new LoadPuzzle(Puzzles.Demo, "", "", ""));

        Assert.Empty(show.Enquiries.View.Calls);
    }

    [Fact]
    public void No_more_calls_are_kept_than_memory_is_meant_for()
    {
        var book = new CallBook();
        book.Show(PlayedSession.Of(Puzzles.Easy).State, At(0));
        for (var viewer = 0; viewer < CallBook.Most + 100; viewer++)
            book.Count(new((ulong)viewer), new(Cell.At(viewer % 81), Digit.Of(1)), At(viewer));

        Assert.Equal(CallBook.Most, book.Cells(Delay.OfSeconds(15)).Sum(calls => calls.Viewers));
    }

    [Fact]
    public void What_the_presenter_sees_of_calls_holds_no_digit_and_no_viewer() => Assert.Equal(
        ["Cell", "Viewers", "Named", "Right", "Standing", "Earlier"], typeof(CellCalls).GetProperties().Select(member => member.Name));

    private static DateTimeOffset At(double seconds) => PlayedSession.Start.AddSeconds(seconds);
}
