using Companion.Engine;
using Companion.Session.Views;

namespace Companion.Session.Tests.Watch;

public sealed class WrongStrikeTests
{
    private readonly PlayedSession _session = PlayedSession.Of(Puzzles.Easy);

    [Fact]
    public void A_strike_that_takes_out_a_true_candidate_is_located_and_its_digit_is_not_named()
    {
        _session.Strike("r1c1", 5).Strike("r1c1", 4).Place("r2c2", 6);

        var note = _session.Note(WatchKind.WrongStrike);

        Assert.Equal("A strike in r1c1 takes out a digit that belongs there: check the strikes in it.", note.Text);
        Assert.Equal("r1c1", note.Cells());
        Assert.Equal(1, note.Entries);
    }

    [Fact]
    public void A_settled_list_that_leaves_out_a_true_candidate_is_located()
    {
        Assert.Empty(_session.List("r1c2", "57").Texts(WatchKind.WrongStrike));

        var note = _session.Settle().Note(WatchKind.WrongStrike);

        Assert.Equal("The list in r1c2 leaves out a digit that belongs there: check it.", note.Text);
        Assert.Equal("r1c2", note.Cells());
    }

    [Fact]
    public void Taking_the_true_digit_out_of_a_settled_list_is_the_entry_to_blame()
    {
        _session.List("r1c2", "578").Settle().Place("r2c2", 6).List("r1c2", "8").Place("r1c6", 1);

        Assert.Equal(1, _session.Note(WatchKind.WrongStrike).Entries);
    }

    [Fact]
    public void A_block_mark_that_leaves_out_the_true_cell_is_named_and_the_cell_is_not()
    {
        // 4 in block 1 goes in r1c1.
        _session.Block("r1c2 r2c3", 4);

        var note = _session.Note(WatchKind.WrongStrike);

        Assert.Equal("The block mark 4 in block 1 leaves out the cell where it goes: check it.", note.Text);
        Assert.Equal("r1c2 r2c3", note.Cells());
    }

    [Fact]
    public void True_marks_and_marks_that_say_nothing_have_no_warning()
    {
        _session.Block("r1c1 r1c2", 4).Block("r2c3", 4).Block("r4c1", 3).Strike("r1c1", 5);
        _session.List("r1c2", "8").Settle().List("r3c2", "7");

        Assert.Empty(_session.Texts(WatchKind.WrongStrike));
    }

    [Fact]
    public void A_block_mark_whose_true_cell_holds_a_wrong_digit_is_the_digits_fault()
    {
        _session.Block("r1c1 r1c2", 4).Place("r1c1", 5);

        Assert.Empty(_session.Texts(WatchKind.WrongStrike));
        Assert.Single(_session.Texts(WatchKind.WrongDigit));
    }

    [Fact]
    public void No_warning_about_a_strike_or_a_list_names_a_digit_of_the_solution()
    {
        foreach (var cell in CellSet.All - _session.State.Grid.Filled)
        {
            var right = _session.State.Grid.Puzzle!.Solution[cell];
            _session.Strike(cell.ToString(), right.Value);
            _session.List(cell.ToString(), (~DigitSet.Of(right)).ToString()).Settle();
            foreach (var text in _session.Texts(WatchKind.WrongStrike).Select(text => text.Replace($"{cell}", "the cell")))
                Assert.DoesNotContain($"{right}", text, StringComparison.Ordinal);
            _session.Erase(cell.ToString());
        }
    }
}
