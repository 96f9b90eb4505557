using Companion.Session.Commands;
using Companion.Session.Following;
using static Companion.Session.Tests.Following.FollowedShow;

namespace Companion.Session.Tests.Following;

public sealed class FollowerTests
{
    private readonly FollowedShow _show = new();

    public FollowerTests() => _show.LookTwice();

    [Fact]
    public void Nothing_is_entered_while_nothing_changes()
    {
        Assert.Empty(_show.Look().Commands);
        Assert.Equal((FollowStatus.Following, null), (_show.Last.Status, _show.Last.Again));
        Assert.Empty(_show.Entered());
    }

    [Fact]
    public void A_digit_is_entered_when_it_was_read_twice_and_not_before()
    {
        _show.Program.Place("r1c1", 4);

        Assert.Empty(_show.Look().Commands);
        Assert.NotNull(_show.Last.Again);
        Assert.Equal([new PlaceDigit(Engine.Cell.Parse("r1c1"), Engine.Digit.Of(4))], _show.Look().Commands);
    }

    [Fact]
    public void A_reading_that_flickers_is_never_entered()
    {
        for (var look = 0; look < 10; look++)
            Assert.Empty(_show.Look(_show.Screen(("r1c1", Sees(look % 2 == 0 ? 4 : 8)))).Commands);
        Assert.Empty(_show.LookTwice().Commands);
    }

    [Fact]
    public void A_wrong_digit_is_entered_as_it_stands()
    {
        _show.Program.Place("r1c1", 5);
        _show.LookTwice();

        Assert.Equal(FollowStatus.Following, _show.Last.Status);
        Assert.Equal("5", _show.Session.State.Grid.DigitAt(Engine.Cell.Parse("r1c1")).ToString());
    }

    [Fact]
    public void An_undo_on_the_screen_is_an_undo_in_the_log()
    {
        _show.Program.Place("r1c1", 4).Place("r1c2", 8);
        _show.LookTwice();
        _show.Entered();

        _show.Program.Undo();
        _show.LookTwice();
        Assert.Equal(["EntryUndone { At = 01/01/0001 00:00:00 +00:00 }"], _show.Entered());

        _show.Program.Undo().Redo().Redo();
        _show.LookTwice();
        Assert.Equal(["EntryRedone { At = 01/01/0001 00:00:00 +00:00 }"], _show.Entered());
    }

    [Fact]
    public void Two_undos_between_two_looks_are_two_undos()
    {
        _show.Program.Place("r1c1", 4);
        _show.LookTwice();
        _show.Program.Place("r1c2", 8);
        _show.LookTwice();

        _show.Program.Undo().Undo();
        Assert.Equal([new Undo(), new Undo()], _show.LookTwice().Commands);
    }

    [Fact]
    public void A_digit_erased_beside_another_entry_is_erased_and_not_undone()
    {
        _show.Program.Place("r1c1", 4);
        _show.LookTwice();
        _show.Program.Erase("r1c1").Place("r1c2", 8);
        _show.LookTwice();

        Assert.Equal(_show.Program.State.Grid, _show.Session.State.Grid);
        Assert.IsType<EraseCells>(_show.Last.Commands[0]);
        Assert.IsType<PlaceDigit>(_show.Last.Commands[1]);
    }

    [Fact]
    public void A_puzzle_cleared_on_the_screen_is_cleared()
    {
        _show.Program.Place("r1c1", 4).Block("r2c2 r2c3", 7).List("r9c9", "27").Strike("r8c8", 5);
        _show.LookTwice();
        Assert.Equal(_show.Program.State.Grid, _show.Session.State.Grid);

        _show.Program.Do(new ClearGrid());
        _show.LookTwice();
        Assert.Equal(_show.Program.State.Grid, _show.Session.State.Grid);
    }

    [Fact]
    public void Half_a_list_counts_only_when_it_has_stood_for_a_while()
    {
        _show.Program.List("r1c1", "4");
        _show.LookTwice();
        Assert.Equal(PlayedSession.Cells("r1c1"), _show.Session.State.Writing);
        _show.Program.List("r1c1", "8");
        _show.LookTwice();
        Assert.Equal(PlayedSession.Cells("r1c1"), _show.Session.State.Writing);

        Assert.InRange(_show.Last.Again!.Value.TotalSeconds, 1.5, Follower.Settled.TotalSeconds);
        _show.Look(after: 1);
        Assert.Equal(PlayedSession.Cells("r1c1"), _show.Session.State.Writing);
        _show.Look(after: 1.1);
        Assert.True(_show.Session.State.Writing.IsEmpty);
        Assert.Null(_show.Look().Again);
    }

    [Fact]
    public void A_list_that_the_presenter_writes_in_the_panel_is_not_finished_by_looking()
    {
        _show.Session.List("r1c1", "4");
        _show.Look(after: 10);
        _show.Look(after: 10);

        Assert.Equal(PlayedSession.Cells("r1c1"), _show.Session.State.Writing);
    }

    [Fact]
    public void With_digits_alone_marks_are_neither_entered_nor_waited_for()
    {
        var show = new FollowedShow(withMarks: false);
        show.Session.Block("r2c2 r2c3", 7);
        show.LookTwice();
        show.Program.List("r9c9", "27");
        show.Look();
        show.Program.Place("r1c1", 4).Strike("r9c9", 2);
        show.LookTwice();

        Assert.Equal([new PlaceDigit(Engine.Cell.Parse("r1c1"), Engine.Digit.Of(4))], show.Last.Commands);
        Assert.Equal(2, show.Session.State.Grid.BlockMarks[Engine.Digit.Of(7)].Count);
        show.Look(after: 60);
        Assert.True(show.Last.Apart.IsEmpty);
    }

    [Fact]
    public void With_digits_alone_small_digits_that_nobody_can_read_hold_nothing_back()
    {
        var show = new FollowedShow(withMarks: false);
        show.Program.List("r9c9", "27");
        show.LookTwice(show.Screen(("r9c9", seen => seen with { IsSure = false })));

        Assert.Empty(show.Last.Held);
    }

    [Fact]
    public void All_candidates_at_once_are_a_few_entries_and_claim_nothing_false_on_the_way()
    {
        var board = Engine.Board.Parse(Puzzles.Easy);
        foreach (var cell in board.Open)
            _show.Program.List(cell.ToString(), board[cell].ToString());
        var screen = _show.Screen();
        _show.Look(screen);
        var commands = _show.Look(screen).Commands;

        Assert.Equal(_show.Program.State.Grid, _show.Session.State.Grid);
        Assert.InRange(commands.Length, 1, 18);
        var played = PlayedSession.Of(Puzzles.Easy);
        foreach (var command in commands)
        {
            played.Do(command);
            Assert.Empty(Companion.Session.Boards.MarkMeaning.Of(played.State.Grid, played.State.Writing) & board.Candidates);
        }
    }
}
