using Companion.Session.Views;

namespace Companion.Session.Tests.Watch;

public sealed class StaleMarkTests
{
    private readonly PlayedSession _session = PlayedSession.Of(Puzzles.Easy);

    [Fact]
    public void A_listed_digit_that_a_peer_holds_is_stale_from_the_placement_on()
    {
        _session.List("r1c2", "58").Settle().Place("r3c2", 5).Place("r1c6", 1);

        var note = _session.Note(WatchKind.StaleMark);

        Assert.Equal("The mark 5 in r1c2 is stale: a 5 that it sees stands already. Take it out.", note.Text);
        Assert.Equal("r1c2", note.Cells());
        Assert.Equal(1, note.Entries);
    }

    [Fact]
    public void The_marks_that_one_digit_makes_stale_are_one_warning()
    {
        // 5 in block 1: block marks in r1c1 and r1c2, lists in r1c2 and r3c1.
        _session.List("r1c2 r3c1", "5").Settle().Block("r1c1 r1c2", 5).Place("r3c2", 5);

        Assert.Equal(
            ["The marks 5 in r1c1, r1c2 and r3c1 are stale: a 5 that they see stands already. Take them out."],
            _session.Texts(WatchKind.StaleMark));
    }

    [Fact]
    public void A_block_mark_in_a_place_that_a_line_rules_out_is_stale() => Assert.Equal(
        ["The mark 4 in r3c1 is stale: a 4 that it sees stands already. Take it out."],
        _session.Block("r1c1 r3c1", 4).Texts(WatchKind.StaleMark));

    [Fact]
    public void A_digit_that_is_struck_in_its_cell_is_not_stale() =>
        Assert.Empty(_session.List("r1c2", "58").Settle().Place("r3c2", 5).Strike("r1c2", 5).Texts(WatchKind.StaleMark));

    [Fact]
    public void Marks_that_may_be_true_are_not_stale() =>
        Assert.Empty(_session.List("r1c2", "58").Settle().Block("r1c1 r1c2", 4).Texts(WatchKind.StaleMark));
}
