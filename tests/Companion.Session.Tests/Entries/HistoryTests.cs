using Companion.Engine;
using Companion.Session.Commands;

namespace Companion.Session.Tests.Entries;

public sealed class HistoryTests
{
    private readonly PlayedSession _session = PlayedSession.Of(Puzzles.Easy);

    [Fact]
    public void Undo_and_redo_walk_through_the_entries()
    {
        _session.Place("r1c1", 4).Strike("r1c2", 5).Undo();
        Assert.Equal("4 in r1c1", _session.State.History.Last?.Label);
        Assert.Equal("strike 5 in r1c2", _session.State.History.Next?.Label);
        Assert.Empty(_session.State.Grid.Struck);

        _session.Redo();
        Assert.Equal("strike 5 in r1c2", _session.State.History.Last?.Label);
        Assert.Null(_session.State.History.Next);
        Assert.Equal(CandidateSet.Parse("r1c2=5"), _session.State.Grid.Struck);
    }

    [Fact]
    public void A_new_entry_closes_what_could_be_redone() => Assert.Equal(
        "There is nothing to redo: it is open only until the next entry.",
        _session.Place("r1c1", 4).Undo().Place("r1c1", 5).Refused(new Redo()));

    [Fact]
    public void At_the_start_there_is_nothing_to_undo() =>
        Assert.Equal("This is the start: there is nothing to undo.", _session.Refused(new Undo()));

    [Fact]
    public void A_list_that_was_being_written_is_being_written_again_after_an_undo()
    {
        _session.List("r1c1", "48").Place("r5c5", 6);
        Assert.Empty(_session.State.Writing);

        Assert.Equal(PlayedSession.Cells("r1c1"), _session.Undo().State.Writing);
        Assert.Empty(_session.Redo().State.Writing);
    }

    [Fact]
    public void A_new_puzzle_can_be_undone()
    {
        _session.Place("r1c1", 4).Do(new LoadPuzzle(Puzzles.Hard, "Another", "", ""));
        Assert.Equal("the new puzzle", _session.State.History.Last?.Label);

        _session.Undo();
        Assert.Equal("Title", _session.State.Grid.Credit.Title);
        Assert.Equal(CandidateSet.Parse("r1c1=4"), _session.State.Grid.Placed);

        Assert.Equal("Another", _session.Redo().State.Grid.Credit.Title);
    }

    [Fact]
    public void Clearing_the_grid_can_be_undone()
    {
        _session.Place("r1c1", 4).Do(new ClearGrid()).Undo();

        Assert.Equal(CandidateSet.Parse("r1c1=4"), _session.State.Grid.Placed);
    }

    [Fact]
    public void An_undo_and_a_redo_are_entries_and_settling_marks_is_none()
    {
        _session.List("r1c1", "48").Settle().Undo().Redo();

        Assert.Equal(4, _session.State.Entries);
    }

    [Fact]
    public void Every_entry_has_a_label_in_a_few_words()
    {
        _session.Place("r4c5", 3).Erase("r4c5").Block("r1c1 r1c2", 4).Block("r1c1", 4).List("r2c2 r2c3 r3c1 r3c2", "7");
        _session.List("r2c2", "7").Strike("r2c3 r3c1 r3c2", 7).Strike("r3c1 r3c2", 7).Do(new ClearGrid());

        Assert.Equal(
            """
            3 in r4c5
            erasing r4c5
            block mark 4 in block 1
            block mark 4 out of r1c1
            7 in the list of 4 cells
            7 out of the list of r2c2
            strike 7 in r2c3, r3c1 and r3c2
            strike 7 in r3c1 and r3c2 taken back
            clearing the grid
            """,
            string.Join('\n', _session.State.History.Made.Reverse().Select(step => step.Label)));
    }
}
