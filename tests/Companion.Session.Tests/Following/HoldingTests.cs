using Companion.Engine;
using Companion.Session.Commands;
using Companion.Session.Following;
using static Companion.Session.Tests.Following.FollowedShow;

namespace Companion.Session.Tests.Following;

/// <summary>What is not entered before the presenter says so.</summary>
public sealed class HoldingTests
{
    private readonly FollowedShow _show = new();

    public HoldingTests() => _show.LookTwice();

    [Fact]
    public void An_unsure_cell_waits_while_the_others_go_on()
    {
        _show.Program.Place("r1c2", 8);
        _show.LookTwice(_show.Screen(("r1c1", Sees(4, isSure: false))));

        Assert.Equal(FollowStatus.Unsure, _show.Last.Status);
        Assert.Equal([new HeldCell(Cell.Parse("r1c1"), new(Digit.Of(4)), HeldReason.Unsure)], _show.Last.Held);
        Assert.Equal("r1c2=8", _show.Session.State.Grid.Placed.ToString());
        Assert.True(_show.Look(_show.Screen(("r1c1", Sees(4, isSure: false))), after: 60).Apart.IsEmpty);
    }

    [Theory]
    [InlineData(null, "r1c1=4")] // as it was read
    [InlineData(8, "r1c1=8")]
    [InlineData(0, "")]
    public void One_word_of_the_presenter_settles_it_for_as_long_as_the_reading_stays(int? said, string placed)
    {
        var screen = _show.Screen(("r1c1", Sees(4, isSure: false)));
        _show.LookTwice(screen);
        _show.Say("r1c1", said);
        _show.Look(screen);

        Assert.Empty(_show.Last.Held);
        Assert.Equal(placed, _show.Session.State.Grid.Placed.ToString());

        var other = _show.Screen(("r1c1", Sees(9, isSure: false)));
        _show.LookTwice(other);
        Assert.Equal("9", Assert.Single(_show.Last.Held).Read.Digit.ToString());
    }

    [Fact]
    public void A_sign_that_is_read_as_nothing_at_all_waits_until_it_is_said_or_gone()
    {
        var sign = _show.Screen(("r1c1", SeesNothing(isSure: false)));
        _show.LookTwice(sign);
        Assert.Equal([new HeldCell(Cell.Parse("r1c1"), default, HeldReason.Unsure)], _show.Last.Held);
        Assert.Empty(_show.LookTwice().Held);

        _show.LookTwice(sign);
        _show.Say("r1c1", 4);
        Assert.Empty(_show.Look(sign).Held);
        Assert.Equal("r1c1=4", _show.Session.State.Grid.Placed.ToString());

        // What was said is learned, and then the cell is emptied.
        _show.LookTwice(_show.Screen(("r1c1", Sees(4))));
        Assert.Equal("r1c1=4", _show.Session.State.Grid.Placed.ToString());
        _show.LookTwice();
        Assert.Empty(_show.Session.State.Grid.Placed);
        Assert.Empty(_show.Last.Held);
    }

    [Fact]
    public void A_mark_that_does_not_look_like_itself_any_more_waits_though_it_reads_the_same_until_it_is_said_or_gone()
    {
        _show.Program.Do(new ToggleCellMark(CellSet.Of(Cell.Parse("r1c1")), Digit.Of(2)));
        _show.LookTwice();
        var onlyUnsure = _show.Screen(("r1c1", seen => seen with { IsSure = false }));
        Assert.Empty(_show.LookTwice(onlyUnsure).Held);

        var unlike = _show.Screen(("r1c1", seen => seen with { IsSure = false, HasDoubtfulMark = true }));
        Assert.Equal(HeldReason.Unsure, Assert.Single(_show.LookTwice(unlike).Held).Reason);
        Assert.Empty(_show.LookTwice().Held);

        _show.LookTwice(unlike);
        _show.Say("r1c1", null);
        Assert.Empty(_show.LookTwice(unlike).Held);
        Assert.Equal("2", _show.Session.State.Grid.CellMarks[Cell.Parse("r1c1")].ToString());
    }

    [Fact]
    public void A_shape_that_the_presenter_calls_nothing_is_not_asked_about_again()
    {
        var shape = _show.Screen(("r1c1", SeesNothing(isSure: false)));
        _show.LookTwice(shape);
        _show.Say("r1c1", 0);

        Assert.Empty(_show.LookTwice(shape).Held);
        Assert.Equal(FollowStatus.Following, _show.Last.Status);
    }

    [Fact]
    public void A_reading_that_has_learned_what_was_said_is_not_asked_about_again_however_unsure_it_stays()
    {
        _show.LookTwice(_show.Screen(("r1c1", Sees(7, isSure: false))));
        _show.Say("r1c1", 4);
        _show.Look(_show.Screen(("r1c1", Sees(4, isSure: false))));

        Assert.Empty(_show.Last.Held);
        Assert.Equal("r1c1=4", _show.Session.State.Grid.Placed.ToString());
    }

    [Fact]
    public void A_digit_that_stands_in_its_house_already_waits_until_it_is_accepted()
    {
        _show.Program.Place("r1c1", 3);
        _show.LookTwice();

        Assert.Equal([new HeldCell(Cell.Parse("r1c1"), new(Digit.Of(3)), HeldReason.EqualDigits)], _show.Last.Held);
        Assert.Empty(_show.Session.State.Grid.Placed);

        _show.Say("r1c1", null);
        _show.Look();
        Assert.Equal("r1c1=3", _show.Session.State.Grid.Placed.ToString());
        Assert.Empty(_show.Look().Held);
    }

    [Fact]
    public void A_digit_that_goes_from_one_cell_to_another_of_the_house_waits_for_nobody()
    {
        _show.Program.Place("r1c1", 4);
        _show.LookTwice();
        _show.Program.Erase("r1c1").Place("r1c2", 4);
        _show.LookTwice();

        Assert.Empty(_show.Last.Held);
        Assert.Equal("r1c2=4", _show.Session.State.Grid.Placed.ToString());
    }

    [Fact]
    public void A_given_that_changed_waits_and_never_changes_the_puzzle()
    {
        var screen = _show.Screen(("r1c3", Sees(8)), ("r1c5", SeesNothing()));
        _show.LookTwice(screen);

        Assert.Equal(
            [("r1c3", HeldReason.GivenChanged), ("r1c5", HeldReason.GivenChanged)],
            _show.Last.Held.Select(held => (held.Cell.ToString(), held.Reason)));
        _show.Say("r1c3", null);
        _show.Look(screen);
        Assert.Equal("r1c5", Assert.Single(_show.Last.Held).Cell.ToString());
        Assert.Empty(_show.Entered());
    }

    [Fact]
    public void Something_that_lies_over_the_grid_enters_nothing_and_takes_nothing_back()
    {
        _show.Program.Place("r1c1", 4);
        _show.LookTwice();
        _show.Entered();
        foreach (var isSure in new[] { true, false })
        {
            _show.LookTwice(_show.Screen().Each((_, _) => new(default, null, isSure)));
            Assert.Equal(FollowStatus.GridNotFound, _show.Last.Status);
        }

        Assert.Equal(FollowStatus.Following, _show.LookTwice().Status);
        Assert.Empty(_show.Entered());
    }
}
