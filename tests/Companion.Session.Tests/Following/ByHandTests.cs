using Companion.Session.Following;

namespace Companion.Session.Tests.Following;

/// <summary>Entries made by hand in the panel while the screen is followed.</summary>
public sealed class ByHandTests
{
    private readonly FollowedShow _show = new();

    public ByHandTests() => _show.LookTwice();

    [Fact]
    public void An_entry_by_hand_stays_and_is_told_as_apart_after_a_while()
    {
        _show.Session.Place("r1c1", 4);

        Assert.True(_show.Look().Apart.IsEmpty);
        Assert.InRange(_show.Last.Again!.Value, TimeSpan.FromSeconds(2), Follower.Noticed);
        _show.Look(after: 3);
        Assert.Equal(PlayedSession.Cells("r1c1"), _show.Last.Apart);
        Assert.Equal("r1c1=4", _show.Session.State.Grid.Placed.ToString());
    }

    [Fact]
    public void What_was_entered_by_hand_and_then_on_the_screen_is_one_entry()
    {
        _show.Session.Place("r1c1", 4);
        _show.Entered();
        _show.Program.Place("r1c1", 4);
        _show.LookTwice();

        Assert.Empty(_show.Entered());
        Assert.True(_show.Look(after: 10).Apart.IsEmpty);
    }

    [Fact]
    public void Where_the_screen_changes_the_screen_wins()
    {
        _show.Session.Place("r1c1", 4);
        _show.Program.Place("r1c1", 5);
        _show.LookTwice();

        Assert.Equal("r1c1=5", _show.Session.State.Grid.Placed.ToString());
    }

    [Fact]
    public void An_undo_on_the_screen_does_not_undo_what_was_entered_by_hand()
    {
        _show.Program.Place("r1c1", 4);
        _show.LookTwice();
        _show.Session.Place("r9c9", 2);
        _show.Program.Undo();
        _show.LookTwice();

        Assert.Equal("r9c9=2", _show.Session.State.Grid.Placed.ToString());
    }

    [Fact]
    public void On_demand_all_is_taken_as_it_is_on_the_screen()
    {
        _show.Program.Place("r1c2", 8).List("r9c9", "27");
        _show.LookTwice();
        _show.Session.Place("r1c1", 4).Erase("r1c2").List("r9c9", "2").Block("r2c2 r2c3", 7);
        _show.TakeScreen();

        Assert.Equal(_show.Program.State.Grid, _show.Session.State.Grid);
    }

    [Fact]
    public void At_first_sight_what_the_session_has_beyond_the_screen_stays()
    {
        var show = new FollowedShow();
        show.Session.Place("r1c1", 4).Block("r2c2 r2c3", 7).List("r9c9", "27");
        show.Program.Place("r1c2", 8).List("r9c9", "2");
        show.LookTwice();

        Assert.Equal("r1c1=4 r1c2=8", show.Session.State.Grid.Placed.ToString());
        Assert.Equal("27", show.Session.State.Grid.CellMarks[Engine.Cell.Parse("r9c9")].ToString());
        Assert.Equal(PlayedSession.Cells("r1c1 r2c2 r2c3 r9c9"), show.Look(after: 4).Apart);
    }
}
