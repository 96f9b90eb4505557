using Companion.Engine;
using Companion.Session.Commands;
using Companion.Session.Events;
using Companion.Session.State;

namespace Companion.Session.Tests.Entries;

public sealed class MarkTests
{
    private readonly PlayedSession _session = PlayedSession.Of(Puzzles.Easy);

    [Fact]
    public void A_block_mark_is_being_written_until_it_has_two_places()
    {
        Assert.False(Mark("r1c1", 4).IsComplete);
        Assert.True(Mark("r1c2", 4).IsComplete);
    }

    [Fact]
    public void A_block_mark_stays_complete_when_it_is_down_to_one_place()
    {
        _session.Block("r1c1 r1c2", 4);

        var mark = Mark("r1c1", 4);

        Assert.True(mark.IsComplete);
        Assert.Equal(PlayedSession.Cells("r1c2"), mark.Places);
    }

    [Fact]
    public void A_block_mark_that_was_taken_out_begins_anew()
    {
        _session.Block("r1c1 r1c2", 4).Block("r1c1 r1c2", 4);

        Assert.Empty(_session.State.Grid.BlockMarks);
        Assert.False(Mark("r1c1", 4).IsComplete);
    }

    [Fact]
    public void A_block_mark_has_at_most_three_places()
    {
        _session.Block("r1c1 r1c2 r2c2", 4);

        const string Reason = "A block mark has at most 3 places: take one out first, or write candidate lists.";
        Assert.Equal(Reason, _session.Refused(Block("r2c3", 4)));
        Assert.Equal(Reason, _session.Refused(Block("r2c2 r2c3", 4)));
    }

    [Fact]
    public void A_block_mark_lies_in_one_block() => Assert.Equal(
        "A block mark lies in one block: choose cells of one block.", _session.Refused(Block("r1c1 r1c4", 4)));

    [Fact]
    public void Marks_go_into_empty_cells()
    {
        const string Reason = "Marks go into empty cells: choose some, or erase the digit first.";
        var filled = PlayedSession.Cells("r1c3");

        Assert.Equal(Reason, _session.Refused(new ToggleBlockMark(filled, Digit.Of(4))));
        Assert.Equal(Reason, _session.Refused(new ToggleCellMark(filled, Digit.Of(4))));
        Assert.Equal(Reason, _session.Refused(new ToggleStrike(CellSet.Empty, Digit.Of(4))));
    }

    [Fact]
    public void Filled_cells_among_those_chosen_are_left_alone()
    {
        _session.Block("r1c1 r1c3", 4).List("r1c1 r1c3", "48").Strike("r1c1 r1c3", 5);

        Assert.Equal(PlayedSession.Cells("r1c1"), _session.State.Grid.Written);
    }

    [Fact]
    public void A_digit_is_written_into_all_cells_unless_it_is_in_all_of_them_already()
    {
        _session.List("r1c1", "4").List("r1c1 r1c2", "4");
        Assert.Equal(CandidateSet.Parse("r1c1=4 r1c2=4"), _session.State.Grid.CellMarks);
        Assert.Equal(
            new CellMarkChanged(PlayedSession.Start.AddSeconds(2), PlayedSession.Cells("r1c2"), Digit.Of(4), IsSet: true),
            _session.Log[^1]);

        _session.List("r1c1 r1c2", "4");
        Assert.Empty(_session.State.Grid.CellMarks);
    }

    [Fact]
    public void Strikes_toggle_in_the_same_way()
    {
        _session.Strike("r1c1", 4).Strike("r1c1 r1c2", 4);
        Assert.Equal(CandidateSet.Parse("r1c1=4 r1c2=4"), _session.State.Grid.Struck);

        _session.Strike("r1c1 r1c2", 4);
        Assert.Empty(_session.State.Grid.Struck);
    }

    [Fact]
    public void A_list_is_being_written_until_it_is_settled()
    {
        Assert.Equal(PlayedSession.Cells("r1c1"), _session.List("r1c1", "48").State.Writing);
        Assert.Empty(_session.Settle().State.Writing);
        Assert.Empty(_session.Try(new SettleMarks()).Events);
    }

    [Theory]
    [InlineData("digit")]
    [InlineData("block mark")]
    [InlineData("strike")]
    [InlineData("erasure")]
    public void A_list_is_settled_by_any_entry_in_another_cell(string entry)
    {
        _session.Strike("r4c2", 3).List("r1c1", "48");
        _ = entry switch
        {
            "digit" => _session.Place("r5c5", 6),
            "block mark" => _session.Block("r4c1 r4c2", 4),
            "strike" => _session.Strike("r5c5", 3),
            _ => _session.Erase("r4c2"),
        };

        Assert.Empty(_session.State.Writing);
        Assert.Equal(CandidateSet.Parse("r1c1=4 r1c1=8"), _session.State.Grid.CellMarks);
    }

    [Fact]
    public void A_list_is_settled_by_the_next_list_and_not_by_a_strike_in_its_own_cell()
    {
        Assert.Equal(PlayedSession.Cells("r1c1"), _session.List("r1c1", "48").Strike("r1c1", 8).State.Writing);
        Assert.Equal(PlayedSession.Cells("r1c2"), _session.List("r1c2", "8").State.Writing);
    }

    [Fact]
    public void Taking_a_digit_out_of_a_settled_list_leaves_it_settled_and_writing_one_in_opens_it()
    {
        _session.List("r1c1", "458").Settle();

        Assert.Empty(_session.List("r1c1", "5").State.Writing);
        Assert.Equal(PlayedSession.Cells("r1c1"), _session.List("r1c1", "5").State.Writing);
    }

    [Fact]
    public void A_list_whose_last_digit_is_taken_out_is_no_list()
    {
        _session.List("r1c1", "4").List("r1c1", "4");

        Assert.Empty(_session.State.Writing);
        Assert.Empty(_session.State.Grid.Written);
    }

    private static ToggleBlockMark Block(string cells, int digit) => new(PlayedSession.Cells(cells), Digit.Of(digit));

    private BlockMark Mark(string cells, int digit) => Assert.Single(_session.Block(cells, digit).State.Grid.BlockMarks);
}
