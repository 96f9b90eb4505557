using Companion.Engine;
using Companion.Session.Boards;

namespace Companion.Session.Tests.Boards;

public sealed class SeenBoardTests
{
    private readonly PlayedSession _session = PlayedSession.Of(Puzzles.Easy);

    private Board Seen => SeenBoard.Of(_session.State.Grid, _session.State.Writing).Value!;

    [Fact]
    public void Without_marks_it_is_the_digits_and_what_they_see()
    {
        Assert.Equal(Puzzle.Parse(Puzzles.Easy).Board.Candidates, Seen.Candidates);
        Assert.Equal(
            """
            xx.x.x...
            .xx.x....
            ......4..
            xx..x..xx
            .xxxxx.x.
            xx..x..xx
            xx..x..xx
            .xx.x..x.
            xx.x.x.xx
            """,
            Drawing.Of(Seen, 4));
    }

    [Fact]
    public void Placed_digits_are_no_givens()
    {
        _session.Place("r1c1", 4);

        Assert.True(Seen.Filled.Contains(Cell.Parse("r1c1")));
        Assert.False(Seen.Givens.Contains(Cell.Parse("r1c1")));
    }

    [Fact]
    public void A_block_mark_says_that_the_digit_is_gone_from_the_other_cells_of_the_block()
    {
        _session.Block("r1c1 r1c2", 4);

        Assert.Equal(
            """
            xx.x.x...
            ....x....
            ......4..
            """,
            Drawing.Of(Seen, 4)[..29]);
    }

    [Fact]
    public void A_block_mark_says_nothing_about_its_line() =>
        Assert.True(After(_session.Block("r1c1 r1c2", 4))[Digit.Of(4)].Contains(Cell.Parse("r1c4")));

    [Fact]
    public void A_block_mark_that_never_had_two_places_says_nothing() => SaysNothing(_session.Block("r1c1", 4));

    [Fact]
    public void A_block_mark_that_is_down_to_one_place_says_that_the_digit_is_there()
    {
        _session.Block("r1c1 r1c2", 4).Block("r1c2", 4);

        Assert.Equal(PlayedSession.Cells("r1c1"), Seen[Digit.Of(4)] & House.Block(1).Cells);
    }

    [Fact]
    public void A_block_mark_whose_block_has_the_digit_says_nothing() =>
        Assert.Equal(
            After(PlayedSession.Of(Puzzles.Easy).Place("r2c2", 4)).Candidates,
            After(_session.Block("r1c1 r1c2", 4).Place("r2c2", 4)).Candidates);

    [Fact]
    public void A_block_mark_that_nothing_can_fulfil_says_nothing() =>
        Assert.Equal(
            After(PlayedSession.Of(Puzzles.Easy).Place("r2c5", 7)).Candidates,
            After(_session.Block("r2c2 r2c3", 7).Place("r2c5", 7)).Candidates);

    [Fact]
    public void A_list_says_that_other_digits_are_gone_from_the_cell_once_it_is_settled()
    {
        SaysNothing(_session.List("r1c2", "48"));

        Assert.Equal(DigitSet.Parse("48"), After(_session.Settle())[Cell.Parse("r1c2")]);
    }

    [Fact]
    public void A_list_of_one_digit_counts_as_what_it_says_once_it_is_settled()
    {
        SaysNothing(_session.List("r1c2", "8"));

        Assert.Equal(DigitSet.Parse("8"), After(_session.Place("r5c5", 6))[Cell.Parse("r1c2")]);
    }

    [Fact]
    public void A_listed_digit_that_cannot_stand_there_does_not_come_back()
    {
        Assert.Equal(DigitSet.Parse("8"), After(_session.List("r1c2", "138").Settle())[Cell.Parse("r1c2")]);
    }

    [Fact]
    public void A_struck_candidate_is_gone_until_the_strike_is_taken_back()
    {
        var all = Puzzle.Parse(Puzzles.Easy).Board.Candidates;

        Assert.Equal(CandidateSet.Parse("r1c2=8"), all - After(_session.Strike("r1c2", 8)).Candidates);
        SaysNothing(_session.Strike("r1c2", 8));
    }

    [Fact]
    public void Equal_digits_in_a_house_and_cells_without_candidates_are_faults()
    {
        var equal = _session.Place("r1c1", 3).State;
        Assert.Contains(new BoardFault.TwoEqualDigits(House.Row(1), Digit.Of(3), Cell.Parse("r1c1"), Cell.Parse("r1c3")),
            SeenBoard.Of(equal.Grid, equal.Writing).Faults);

        var dead = _session.Undo().List("r1c2", "1").Settle().State;
        Assert.Equal([new BoardFault.NoCandidateLeft(Cell.Parse("r1c2"))], SeenBoard.Of(dead.Grid, dead.Writing).Faults);
    }

    private static Board After(PlayedSession session) => SeenBoard.Of(session.State.Grid, session.State.Writing).Value!;

    private static void SaysNothing(PlayedSession session) =>
        Assert.Equal(Puzzle.Parse(Puzzles.Easy).Board.Candidates, After(session).Candidates);
}
