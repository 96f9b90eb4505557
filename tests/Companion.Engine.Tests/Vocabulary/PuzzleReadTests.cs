namespace Companion.Engine.Tests.Vocabulary;

public class PuzzleReadTests
{
    // The easy example, and its solution, of the code that goes with Russell & Norvig, "Artificial Intelligence: A Modern
    // Approach".
    private const string Easy = "003020600900305001001806400008102900700000008006708200002609500800203009005010300";
    private const string Solved = "483921657967345821251876493548132976729564138136798245372689514814253769695417382";

    [Fact]
    public void A_puzzle_has_one_solution_and_knows_it()
    {
        var puzzle = Puzzle.Parse(Easy);

        Assert.Equal(Solved, puzzle.Solution.ToString());
        Assert.Equal(Easy.Replace('0', '.'), puzzle.Board.ToString());
        Assert.True(puzzle.Solution.Holds(Candidate.Parse("r1c1=4")));
        Assert.False(puzzle.Solution.Holds(Candidate.Parse("r1c1=5")));
    }

    [Fact]
    public void No_solution_and_several_solutions_are_reasons_with_a_way_out()
    {
        // 1 has no place left in row 1, though every empty cell has candidates.
        var none = Puzzle.Read(BoardText.Read("""
            ......234
            1........
            ...1.....
            .........
            .........
            .........
            .........
            .........
            .........
            """));
        var several = Puzzle.Read(new GridDraft(Solved.Replace('1', '.').Replace('2', '.')));

        Assert.Equal([new BoardFault.NoSolution()], none.Faults);
        var fault = Assert.IsType<BoardFault.SeveralSolutions>(Assert.Single(several.Faults));
        Assert.Equal(DigitSet.Parse("12"), DigitSet.Of(fault.One, fault.Other));
        Assert.Equal(CellSet.Of(fault.Cell), fault.Cells);
        Assert.StartsWith(
            $"This grid has more than one solution ({fault.Cell} can be ", fault.Sentence, StringComparison.Ordinal);
    }

    [Fact]
    public void The_faults_of_the_board_come_before_any_search()
    {
        var reading = Puzzle.Read(new GridDraft("55" + new string('.', 79)));

        Assert.False(reading.IsGood);
        Assert.All(reading.Faults, fault => Assert.IsType<BoardFault.TwoEqualDigits>(fault));
        Assert.Throws<FormatException>(() => Puzzle.Parse("55" + new string('.', 79)));
    }

    [Fact]
    public void A_digit_placed_wrongly_leaves_no_solution()
    {
        var board = Board.Parse(Easy);
        var wrong = board.Candidates.First(candidate => Solved[candidate.Cell.Index] - '0' != candidate.Digit.Value);

        var reading = Puzzle.Read(new GridDraft(board.Place(wrong).ToString()));

        Assert.False(reading.IsGood);
    }
}
