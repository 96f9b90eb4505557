using Companion.Session.Views;

namespace Companion.Session.Tests.Watch;

public sealed class FreeDigitTests
{
    private const string Free = "The block mark 4 in block 1 is down to one place, r1c1: a free digit.";

    private readonly PlayedSession _session = PlayedSession.Of(Puzzles.Easy).Block("r1c1 r1c2", 4);

    [Fact]
    public void While_it_has_two_places_it_is_no_free_digit() => Assert.Empty(_session.Texts(WatchKind.FreeDigit));

    // common practice, no source: removing one place of a two-place block mark fills the other.
    [Fact]
    public void Taking_out_one_place_of_two_fills_the_other()
    {
        _session.Block("r1c2", 4);

        var note = _session.Note(WatchKind.FreeDigit);

        Assert.Equal(Free, note.Text);
        Assert.Equal("r1c1", note.Cells());
        Assert.Equal(0, note.Entries);
    }

    [Fact]
    public void Another_digit_in_one_place_fills_the_other() =>
        Assert.Equal([Free], _session.Place("r1c2", 8).Texts(WatchKind.FreeDigit));

    [Fact]
    public void The_digit_in_the_line_of_one_place_fills_the_other()
    {
        var session = PlayedSession.Of(Puzzles.Easy).Block("r2c3 r2c2", 7).Place("r8c2", 7);

        // Wrong as the 7 in r8c2 is, it is what the board says; 7 in block 1 goes in r2c3.
        Assert.Equal(
            ["The block mark 7 in block 1 is down to one place, r2c3: a free digit."], session.Texts(WatchKind.FreeDigit));
    }

    [Fact]
    public void A_strike_or_a_list_that_rules_one_place_out_fills_the_other()
    {
        Assert.Equal([Free], _session.Strike("r1c2", 4).Texts(WatchKind.FreeDigit));
        Assert.Equal([Free], _session.Undo().List("r1c2", "58").Settle().Texts(WatchKind.FreeDigit));
    }

    [Fact]
    public void Of_three_places_one_may_go()
    {
        _session.Block("r2c3", 4).Block("r1c2", 4);
        Assert.Empty(_session.Texts(WatchKind.FreeDigit));

        Assert.Equal([Free], _session.Block("r2c3", 4).Texts(WatchKind.FreeDigit));
    }

    [Fact]
    public void A_mark_that_never_had_two_places_is_no_free_digit() =>
        Assert.Empty(PlayedSession.Of(Puzzles.Easy).Block("r1c1", 4).Texts(WatchKind.FreeDigit));

    [Fact]
    public void Once_the_digit_stands_in_the_block_there_is_nothing_free() =>
        Assert.Empty(_session.Place("r1c1", 4).Texts(WatchKind.FreeDigit));

    [Fact]
    public void A_mark_that_misses_the_true_cell_frees_nothing()
    {
        _session.Block("r1c1", 4);

        Assert.Empty(_session.Texts(WatchKind.FreeDigit));
        Assert.Single(_session.Texts(WatchKind.WrongStrike));
    }
}
