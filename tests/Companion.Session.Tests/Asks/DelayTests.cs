using Companion.Session.Asks.Delays;
using Companion.Session.Commands;
using Companion.Session.State;

namespace Companion.Session.Tests.Asks;

/// <summary>Viewers are answered about the board that they see.</summary>
public sealed class DelayTests
{
    private static readonly SessionState First = PlayedSession.Of(Puzzles.Easy).State;
    private static readonly SessionState Second = PlayedSession.Of(Puzzles.Easy).Place("r2c2", 6).State;

    [Fact]
    public void The_line_gives_what_was_shown_last_until_a_moment()
    {
        var line = new DelayLine();
        line.Show(First, At(0));
        line.Show(Second, At(20));

        Assert.Null(line.At(At(-0.001)));
        Assert.Same(First, line.At(At(0)));
        Assert.Same(First, line.At(At(19.999)));
        Assert.Same(Second, line.At(At(20)));
        Assert.Same(Second, line.At(At(1000)));
    }

    [Fact]
    public void What_the_slowest_viewer_sees_is_kept_and_nothing_older()
    {
        var line = new DelayLine();
        line.Show(First, At(0));
        line.Show(Second, At(20));
        line.Show(First, At(75));
        Assert.Same(First, line.At(At(15)));

        line.Show(Second, At(81));
        Assert.Null(line.At(At(19)));
        Assert.Same(Second, line.At(At(21)));
    }

    [Fact]
    public void A_flood_of_entries_makes_the_line_forget_rather_than_tell_too_much()
    {
        var line = new DelayLine();
        for (var entry = 0; entry <= DelayLine.Longest; entry++)
            line.Show(entry % 2 == 0 ? First : Second, At(entry / 1000.0));

        Assert.Null(line.At(At(0)));
        Assert.Same(Second, line.At(At(0.001)));
    }

    [Fact]
    public void An_entry_is_answered_about_when_viewers_have_seen_it_as_is_its_undo_and_another_puzzle()
    {
        var show = AskedShow.Of(Puzzles.Easy, AskedShow.AtOnce with { DelaySeconds = 15 }).Wait(15).Place("r2c2", 6);

        Assert.Equal(["@ann: r2c2 is still open"], show.Wait(14.9).Types("ann", "!why r2c2"));
        Assert.StartsWith("@ann: Hidden single", show.Wait(0.1).Types("ann", "!why r2c2")[0], StringComparison.Ordinal);

        show.Do(new Undo());
        Assert.StartsWith("@ann: Hidden single", show.Wait(14.9).Types("ann", "!why r2c2")[0], StringComparison.Ordinal);
        Assert.Equal(["@ann: r2c2 is still open"], show.Wait(0.1).Types("ann", "!why r2c2"));

        show.Do(new LoadPuzzle(Puzzles.Demo, "Another", "", ""));
        Assert.Equal(["@ann: “Title”, by Setter"], show.Wait(14.9).Types("ann", "!puzzle"));
        Assert.Equal(["@ann: “Another”"], show.Wait(0.1).Types("ann", "!puzzle"));
    }

    [Fact]
    public void Nothing_is_said_before_anything_was_seen()
    {
        var show = AskedShow.Of(Puzzles.Easy, AskedShow.AtOnce with { DelaySeconds = 15 });

        Assert.Empty(show.Wait(14.9).Types("ann", "!hint"));
        Assert.NotEmpty(show.Wait(0.1).Types("ann", "!hint"));
    }

    [Fact]
    public void The_presenter_changes_the_delay_while_the_show_runs()
    {
        var show = AskedShow.Of(Puzzles.Easy).Wait(60).Place("r2c2", 6);
        Assert.NotEqual(["@ann: r2c2 is still open"], show.Types("ann", "!why r2c2"));

        show.Do(new SetDelay(Delay.OfSeconds(60)));
        Assert.Equal(["@ann: r2c2 is still open"], show.Wait(59).Types("ann", "!why r2c2"));
        Assert.Equal(new Delay(60, 2, 60), show.Enquiries.View.Delay);
    }

    [Theory]
    [InlineData(-1, 0, 0)]
    [InlineData(61, 0, 61)]
    [InlineData(10, -0.5, 12)]
    [InlineData(10, 12, 8)]
    [InlineData(10, double.NaN, 12)]
    [InlineData(10, 2, double.PositiveInfinity)]
    public void A_delay_that_cannot_be_is_refused(int seconds, double least, double most) => Assert.Equal(
        "A delay is 0 to 60 seconds: choose one in between.",
        PlayedSession.Of(Puzzles.Easy).Refused(new SetDelay(new(seconds, least, most))));

    [Fact]
    public void The_delay_is_measured_with_a_code_and_the_middle_one_is_proposed()
    {
        var show = AskedShow.Of(Puzzles.Easy).Do(new ShowDelayCode("kite"));
        Assert.Null(show.Enquiries.View.Measured);

        show.Wait(6).Types("ann", "!delay KITE");
        show.Wait(3.5).Types("bob", "!delay kite");
        show.Types("bob", "!delay moss");
        show.Wait(2).Types("bob", "!delay kite");
        show.Wait(8.5).Types("cy", "!delay kite");

        Assert.Equal((new Delay(10, 6, 20), 3), (show.Enquiries.View.Measured, show.Enquiries.View.MeasuredViewers));
        Assert.Empty(show.Answers);

        // Proposed, and no more than that.
        Assert.Equal(0, show.Enquiries.View.Delay.Seconds);
        show.Do(new SetDelay(show.Enquiries.View.Measured!));
        Assert.Equal(new Delay(10, 6, 20), show.Enquiries.View.Delay);
    }

    [Fact]
    public void A_new_code_measures_anew_and_the_old_one_is_worth_nothing()
    {
        var show = AskedShow.Of(Puzzles.Easy).Do(new ShowDelayCode("kite"));
        show.Wait(5).Types("ann", "!delay kite");
        show.Do(new ShowDelayCode("moss")).Wait(7).Types("bob", "!delay kite");
        show.Types("cy", "!delay moss");

        Assert.Equal(new Delay(7, 7, 7), show.Enquiries.View.Measured);
    }

    [Fact]
    public void A_code_is_good_for_a_while_after_it_was_taken_off_but_not_for_ever()
    {
        var show = AskedShow.Of(Puzzles.Easy).Do(new ShowDelayCode("kite"), new HideDelayCode());
        show.Wait(20).Types("ann", "!delay kite");
        show.Wait(101).Types("bob", "!delay kite");

        Assert.Equal(1, show.Enquiries.View.MeasuredViewers);
    }

    [Fact]
    public void Clearing_the_overlay_takes_the_code_off_too()
    {
        var session = PlayedSession.Of(Puzzles.Easy).Do(new ShowDelayCode("kite"), new ClearAir());

        Assert.Null(session.State.Asks.Code);
        Assert.True(session.Try(new ClearAir()).Events.IsEmpty);
    }

    [Theory]
    [InlineData("")]
    [InlineData("ab")]
    [InlineData("lanterns!")]
    [InlineData("Kite")]
    [InlineData("r4c7")]
    public void A_code_is_a_few_letters(string code) => Assert.Equal(
        "A code has three to eight letters from a to z: choose another.",
        PlayedSession.Of(Puzzles.Easy).Refused(new ShowDelayCode(code)));

    private static DateTimeOffset At(double seconds) => PlayedSession.Start.AddSeconds(seconds);
}
