using Companion.Session.Views;

namespace Companion.Session.Tests.Watch;

public sealed class HouseBrokenTests
{
    private readonly PlayedSession _session = PlayedSession.Of(Puzzles.Easy);

    [Fact]
    public void Equal_digits_in_a_house_are_named_with_the_entry_that_made_them()
    {
        _session.Place("r5c5", 6).Place("r1c1", 3).Place("r5c6", 4);

        var note = _session.Note(WatchKind.HouseBroken);

        Assert.Equal("3 stands twice in row 1, in r1c1 and r1c3: change one of them.", note.Text);
        Assert.Equal("r1c1 r1c3", note.Cells());
        Assert.Equal(1, note.Entries);
        Assert.Equal(PlayedSession.Start.AddSeconds(2), note.Since);
    }

    [Fact]
    public void Two_cells_that_share_two_houses_are_named_once() =>
        Assert.Single(_session.Place("r1c1", 3).Texts(WatchKind.HouseBroken));

    [Fact]
    public void A_cell_without_a_candidate_is_named_with_the_entry_that_emptied_it()
    {
        // r5c6 can only be 4.
        _session.Place("r9c4", 4).Place("r5c5", 4);

        var note = Assert.Single(_session.Warnings(), note => note.Cells() == "r5c6");

        Assert.Equal("No candidate is left in r5c6: a digit that it sees, or a strike in it, is wrong.", note.Text);
        Assert.Equal(0, note.Entries);
    }

    [Fact]
    public void A_digit_without_a_place_is_named_with_its_house()
    {
        _session.Strike("r2c2", 6);

        Assert.Contains(
            "6 has no place left in row 2: a digit, a mark or a strike that rules it out there is wrong.",
            _session.Texts(WatchKind.HouseBroken));
    }

    [Fact]
    public void A_list_that_is_being_written_breaks_nothing()
    {
        Assert.Empty(_session.List("r1c2", "1").Texts(WatchKind.HouseBroken));
        Assert.NotEmpty(_session.Settle().Texts(WatchKind.HouseBroken));
    }

    [Fact]
    public void A_sound_grid_has_no_such_warning() => Assert.Empty(_session.Fill(
        """
        4839216..
        967345..1
        251876493
        548132976
        729564138
        136798245
        372689514
        814253769
        695417382
        """).Texts(WatchKind.HouseBroken));
}
