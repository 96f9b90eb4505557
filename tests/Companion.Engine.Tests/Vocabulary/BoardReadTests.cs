namespace Companion.Engine.Tests.Vocabulary;

/// <summary>A draft may hold anything; all reasons against it are named, each with its cells.</summary>
public class BoardReadTests
{
    [Theory]
    [InlineData("", "A grid has 81 cells and this has 0: give 81 characters or nine lines of nine.")]
    [InlineData("123", "A grid has 81 cells and this has 3: give 81 characters or nine lines of nine.")]
    public void A_grid_of_another_length_is_refused(string text, string reason) =>
        Assert.Equal([reason], Board.Read(new GridDraft(text)).Faults.Select(fault => fault.Sentence));

    [Fact]
    public void Every_character_that_is_no_cell_is_named_with_its_place()
    {
        var reading = Board.Read(new GridDraft($"{Blanks(10)}x{Blanks(69)}0"));

        Assert.False(reading.IsGood);
        Assert.Equal(
        [
            new BoardFault.BadCharacter(10, 'x'),
            new BoardFault.BadCharacter(80, '0'),
        ], reading.Faults);
        Assert.Equal("r2c2", Assert.Single(reading.Faults[0].Cells).ToString());
        Assert.Equal(
            "'x' at character 11 is neither a digit nor a blank: use 1 to 9, and a dot, 0 or space for an empty cell.",
            reading.Faults[0].Sentence);
    }

    [Fact]
    public void A_wrong_length_does_not_hide_a_wrong_character()
    {
        var reading = Board.Read(new GridDraft($"{Blanks(81)}?"));

        Assert.Equal([new BoardFault.WrongLength(82), new BoardFault.BadCharacter(81, '?')], reading.Faults);
        Assert.All(reading.Faults, fault => Assert.Equal(CellSet.Empty, fault.Cells));
    }

    [Fact]
    public void Two_equal_digits_in_a_house_are_named_with_both_cells()
    {
        var reading = Board.Read(BoardText.Read("""
            5.......5
            .........
            .........
            ....7....
            .........
            ....7....
            .........
            .........
            .........
            """));

        Assert.Equal(
        [
            new BoardFault.TwoEqualDigits(House.Row(1), Digit.Of(5), Cell.Of(1, 1), Cell.Of(1, 9)),
            new BoardFault.TwoEqualDigits(House.Column(5), Digit.Of(7), Cell.Of(4, 5), Cell.Of(6, 5)),
            new BoardFault.TwoEqualDigits(House.Block(5), Digit.Of(7), Cell.Of(4, 5), Cell.Of(6, 5)),
        ], reading.Faults);
        Assert.Equal("5 stands twice in row 1, in r1c1 and r1c9: change one of them.", reading.Faults[0].Sentence);
        Assert.Equal(CellSet.Of(Cell.Of(1, 1), Cell.Of(1, 9)), reading.Faults[0].Cells);
    }

    [Fact]
    public void Three_equal_digits_in_a_house_are_two_reasons() => Assert.Equal(
        [
            new BoardFault.TwoEqualDigits(House.Row(1), Digit.Of(5), Cell.Of(1, 1), Cell.Of(1, 5)),
            new BoardFault.TwoEqualDigits(House.Row(1), Digit.Of(5), Cell.Of(1, 1), Cell.Of(1, 9)),
        ], Board.Read(new GridDraft($"5...5...5{Blanks(72)}")).Faults);

    [Fact]
    public void A_cell_without_a_candidate_is_named()
    {
        // r1c1 sees 1 to 8 in its row and block, and 9 in its column.
        var reading = Board.Read(BoardText.Read("""
            .12......
            345......
            678......
            .........
            9........
            .........
            .........
            .........
            .........
            """));

        Assert.Equal([new BoardFault.NoCandidateLeft(Cell.Of(1, 1))], reading.Faults);
        Assert.Equal(
            "No candidate is left in r1c1: a digit that it sees, or a strike in it, is wrong.", reading.Faults[0].Sentence);
    }

    [Fact]
    public void A_cell_whose_candidates_were_all_struck_is_named_too()
    {
        var draft = new GridDraft(Blanks(81)) { Removed = CandidateSet.Of(CellSet.Of(Cell.Of(5, 5)), DigitSet.All) };

        Assert.Equal([new BoardFault.NoCandidateLeft(Cell.Of(5, 5))], Board.Read(draft).Faults);
    }

    [Fact]
    public void Struck_candidates_and_placed_digits_of_a_draft_stand_on_the_board()
    {
        var draft = new GridDraft($"12{Blanks(79)}")
        {
            Placed = CellSet.Of(Cell.Of(1, 2), Cell.Of(9, 9)), // r9c9 is empty, so it is no placed digit.
            Removed = CandidateSet.Parse("r5c5=7 r1c1=1 r1c3=1"), // r1c1 is filled and 1 is gone from r1c3 anyway.
        };

        var board = Board.Read(draft).Value!;

        Assert.Equal(CellSet.Of(Cell.Of(1, 1)), board.Givens);
        Assert.Equal(CellSet.Of(Cell.Of(1, 1), Cell.Of(1, 2)), board.Filled);
        Assert.Equal("12345689", board[Cell.Of(5, 5)].ToString());
        Assert.Equal(Board.Parse(draft.Text).Candidates - draft.Removed, board.Candidates);
    }

    [Fact]
    public void A_draft_has_no_placed_digits_and_no_struck_candidates_unless_they_are_given()
    {
        var draft = new GridDraft("any text");

        Assert.Equal(CellSet.Empty, draft.Placed);
        Assert.Equal(CandidateSet.Empty, draft.Removed);
    }

    [Fact]
    public void Parse_gives_all_reasons_in_one_message()
    {
        var refusal = Assert.Throws<FormatException>(() => Board.Parse($"11{Blanks(79)}"));

        Assert.Equal(
            "1 stands twice in row 1, in r1c1 and r1c2: change one of them. "
            + "1 stands twice in block 1, in r1c1 and r1c2: change one of them.",
            refusal.Message);
    }

    private static string Blanks(int count) => new(BoardText.Blank, count);
}
