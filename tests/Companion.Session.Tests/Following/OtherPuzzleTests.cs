using Companion.Engine;
using Companion.Session.Commands;
using Companion.Session.Following;

namespace Companion.Session.Tests.Following;

public sealed class OtherPuzzleTests
{
    private readonly FollowedShow _show = new();

    [Fact]
    public void Another_puzzle_is_not_loaded_without_asking_and_then_followed_with_what_was_entered_in_it()
    {
        _show.Program.Do(new LoadPuzzle(Puzzles.Hard, "", "", "")).Place("r1c2", 6).List("r1c3", "27");
        _show.LookTwice();

        Assert.Equal(FollowStatus.OtherPuzzle, _show.Last.Status);
        Assert.Equal(Puzzles.Hard, _show.Last.OtherPuzzle);
        Assert.Empty(_show.Entered());

        _show.Session.Do(new LoadPuzzle(_show.Last.OtherPuzzle!, "", "", ""));
        _show.LookTwice();
        Assert.Equal(FollowStatus.Following, _show.Last.Status);
        Assert.Equal(_show.Program.State.Grid with { }, _show.Session.State.Grid);
    }

    [Fact]
    public void Where_nothing_tells_givens_from_placed_digits_those_beyond_the_sessions_puzzle_are_placed()
    {
        _show.Program.Place("r1c1", 4);
        _show.LookTwice(_show.Screen().Each((_, seen) => seen with { IsGiven = null }));

        Assert.Equal("r1c1=4", _show.Session.State.Grid.Placed.ToString());
    }

    [Fact]
    public void Cells_of_another_puzzle_that_nobody_can_read_are_asked_for_first()
    {
        _show.Program.Do(new LoadPuzzle(Puzzles.Hard, "", "", ""));
        var screen = _show.Screen(("r1c1", seen => seen with { Content = new(Digit.Of(7)), IsSure = false }));
        _show.LookTwice(screen);
        Assert.Equal((FollowStatus.Unsure, "r1c1"), (_show.Last.Status, Assert.Single(_show.Last.Held).Cell.ToString()));

        _show.Say("r1c1", 1);
        Assert.Equal(Puzzles.Hard, _show.Look(screen).OtherPuzzle);
    }

    [Fact]
    public void Too_few_digits_for_a_puzzle_are_none()
    {
        _show.Program.Do(new LoadPuzzle(Puzzles.Hard, "", "", ""));
        var givens = Board.Parse(Puzzles.Hard).Givens.Take(16).ToList();
        _show.LookTwice(_show.Screen().Each((cell, seen) => givens.Contains(cell) ? seen : default(SeenCell) with { IsSure = true }));

        Assert.Equal(FollowStatus.GridNotFound, _show.Last.Status);
    }
}
