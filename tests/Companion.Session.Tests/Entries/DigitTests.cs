using Companion.Engine;
using Companion.Session.Commands;
using Companion.Session.Events;

namespace Companion.Session.Tests.Entries;

public sealed class DigitTests
{
    private readonly PlayedSession _session = PlayedSession.Of(Puzzles.Easy);

    [Fact]
    public void A_digit_is_placed_at_the_time_of_the_command()
    {
        var now = _session.Now;

        var decision = _session.Try(new PlaceDigit(Cell.Parse("r1c1"), Digit.Of(4)));

        Assert.Equal([new DigitPlaced(now, Cell.Parse("r1c1"), Digit.Of(4))], decision.Events);
        Assert.Equal(Digit.Of(4), _session.State.Grid.DigitAt(Cell.Parse("r1c1")));
    }

    [Fact]
    public void A_wrong_digit_is_taken_and_replaces_another()
    {
        _session.Place("r1c1", 4).Place("r1c1", 5);

        Assert.Equal(CandidateSet.Parse("r1c1=5"), _session.State.Grid.Placed);
    }

    [Fact]
    public void A_given_is_never_overwritten() => Assert.Equal(
        "r1c3 is a given: choose an empty cell.", _session.Refused(new PlaceDigit(Cell.Parse("r1c3"), Digit.Of(4))));

    [Fact]
    public void The_digit_that_stands_already_is_refused() => Assert.Equal(
        "4 stands in r1c1 already: erase it to take it out.",
        _session.Place("r1c1", 4).Refused(new PlaceDigit(Cell.Parse("r1c1"), Digit.Of(4))));

    [Fact]
    public void A_digit_clears_the_marks_of_its_own_cell_and_of_no_other()
    {
        _session.Block("r1c1 r1c2", 4).List("r1c1 r2c2", "48").Strike("r1c1 r1c2", 5).Place("r1c1", 4);

        var grid = _session.State.Grid;
        Assert.Equal(CandidateSet.Parse("r2c2=4 r2c2=8"), grid.CellMarks);
        Assert.Equal(CandidateSet.Parse("r1c2=5"), grid.Struck);
        Assert.Equal(PlayedSession.Cells("r1c2"), Assert.Single(grid.BlockMarks).Places);
    }

    [Fact]
    public void Erasing_takes_the_digit_out_of_filled_cells_and_the_marks_out_of_open_ones()
    {
        _session.Block("r1c1 r1c2", 4).List("r2c2", "48").Strike("r2c3", 7).Place("r3c1", 2).Erase("r1c1 r2c2 r2c3 r3c1 r1c3");

        var grid = _session.State.Grid;
        Assert.Equal(PlayedSession.Cells("r1c2"), grid.Written);
        Assert.Equal(Digit.Of(3), grid.DigitAt(Cell.Parse("r1c3")));
    }

    [Fact]
    public void Erasing_the_digit_of_a_cell_does_not_bring_its_marks_back() =>
        Assert.Empty(_session.List("r1c1", "48").Place("r1c1", 4).Erase("r1c1").State.Grid.Written);

    [Fact]
    public void Erasing_where_there_is_nothing_is_refused()
    {
        Assert.Equal(
            "Nothing is written there: choose cells with digits or marks.",
            _session.Refused(new EraseCells(PlayedSession.Cells("r1c1"))));
        Assert.Equal(
            "Givens stay: choose cells with digits or marks of your own.",
            _session.Refused(new EraseCells(PlayedSession.Cells("r1c1 r1c3"))));
    }

    [Fact]
    public void Clearing_leaves_the_givens_and_is_refused_when_nothing_else_is_left()
    {
        _session.Place("r1c1", 4).Strike("r1c2", 5).Do(new ClearGrid());

        Assert.Empty(_session.State.Grid.Written);
        Assert.Equal("Only givens are left: there is nothing to clear.", _session.Refused(new ClearGrid()));
    }
}
