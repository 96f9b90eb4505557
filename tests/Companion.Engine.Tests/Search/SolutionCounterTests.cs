using Companion.Engine.Search;

namespace Companion.Engine.Tests.Search;

public sealed class SolutionCounterTests
{
    // Source: the easy example of the code that goes with Russell & Norvig, "Artificial Intelligence: A Modern Approach".
    private const string Easy = "003020600900305001001806400008102900700000008006708200002609500800203009005010300";
    private const string EasySolved = "483921657967345821251876493548132976729564138136798245372689514814253769695417382";

    // The solution of the easy example without four digits that two rows and two columns of two blocks can hold crosswise.
    private const string TwoWays =
        """
        4.3921.57
        9.7345.21
        251876493
        548132976
        729564138
        136798245
        372689514
        814253769
        695417382
        """;

    // No digit is doubled, yet 1 has no place in row 1: its empty cells are all in block 3, which has a 1.
    private const string NoWay =
        """
        234567...
        .........
        .......1.
        .........
        .........
        .........
        .........
        .........
        .........
        """;

    [Fact]
    public void A_puzzle_has_one_solution()
    {
        Assert.Equal(1, SolutionCounter.Count(Board.Parse(Easy)));
        Assert.Equal(EasySolved, SolutionCounter.Find(Board.Parse(Easy)).Single().ToString());
    }

    [Fact]
    public void A_full_grid_is_its_own_only_solution()
    {
        Assert.Equal(EasySolved, SolutionCounter.Find(Board.Parse(EasySolved)).Single().ToString());
    }

    [Fact]
    public void Two_digits_that_can_change_places_make_two_solutions()
    {
        var solutions = SolutionCounter.Find(Board.Parse(TwoWays), limit: 10);

        Assert.Equal(["86", "68"], solutions.Select(grid => $"{grid[Cell.Parse("r1c2")]}{grid[Cell.Parse("r1c7")]}").OrderDescending());
        Assert.All(solutions, grid => AssertFills(Board.Parse(TwoWays), grid));
    }

    [Fact]
    public void A_board_without_room_for_a_digit_has_no_solution()
    {
        Assert.Equal(0, SolutionCounter.Count(Board.Parse(NoWay)));
        Assert.Empty(SolutionCounter.Find(Board.Parse(NoWay)));
    }

    [Theory]
    [InlineData(1)]
    [InlineData(2)]
    [InlineData(3)]
    [InlineData(1000)]
    public void Counting_stops_at_the_limit(int limit)
    {
        Assert.Equal(limit, SolutionCounter.Count(Board.Blank, limit));
        var solutions = SolutionCounter.Find(Board.Blank, limit);
        Assert.Equal(limit, solutions.Select(grid => grid.ToString()).Distinct().Count());
        Assert.All(solutions, grid => AssertFills(Board.Blank, grid));
        Assert.Equal(Math.Min(limit, 2), SolutionCounter.Count(Board.Parse(TwoWays), limit));
    }

    [Theory]
    [InlineData(0)]
    [InlineData(-1)]
    public void A_limit_below_one_is_refused(int limit)
    {
        Assert.Throws<ArgumentOutOfRangeException>(() => SolutionCounter.Count(Board.Blank, limit));
        Assert.Throws<ArgumentOutOfRangeException>(() => SolutionCounter.Count(Easy, limit));
        Assert.Throws<ArgumentOutOfRangeException>(() => SolutionCounter.Find(Board.Blank, limit));
    }

    [Fact]
    public void Removed_candidates_are_respected()
    {
        var board = Board.Parse(TwoWays);

        Assert.Equal(1, SolutionCounter.Count(board.Remove(CandidateSet.Parse("r1c2=6"))));
        Assert.Equal('8', SolutionCounter.Find(board.Remove(CandidateSet.Parse("r2c7=6"))).Single().ToString()[1]);
        Assert.Equal(0, SolutionCounter.Count(board.Remove(CandidateSet.Parse("r1c2=6 r1c7=6"))));
    }

    [Fact]
    public void A_board_with_a_dead_cell_has_no_solution()
    {
        var board = Board.Parse(Easy);
        var dead = board.Remove(CandidateSet.Of(CellSet.Of(Cell.Parse("r1c1")), DigitSet.All));

        Assert.False(dead.DeadCells.IsEmpty);
        Assert.Equal(0, SolutionCounter.Count(dead));
    }

    [Theory]
    [InlineData("11.......")] // in a row and a block
    [InlineData("1......1.")] // in a row
    [InlineData("1.................1......")] // in a column and a block
    [InlineData("1...................................1")] // in a column
    [InlineData("1.........1")] // in a block
    public void Givens_that_break_a_house_have_no_solution(string start)
    {
        Assert.Equal(0, SolutionCounter.Count(start.PadRight(Cell.Count, '.')));
    }

    [Fact]
    public void Givens_as_text_count_as_the_board_does()
    {
        Assert.Equal(1, SolutionCounter.Count(Easy));
        Assert.Equal(2, SolutionCounter.Count(TwoWays.ReplaceLineEndings("")));
        Assert.Equal(0, SolutionCounter.Count(NoWay.ReplaceLineEndings("")));
        Assert.Throws<ArgumentException>(() => SolutionCounter.Count("123"));
    }

    [Fact]
    public void Counting_allocates_nothing()
    {
        var board = Board.Parse(Easy);
        SolutionCounter.Count(board);
        var before = GC.GetAllocatedBytesForCurrentThread();

        SolutionCounter.Count(board);
        SolutionCounter.Count(Board.Blank, limit: 100);

        Assert.Equal(0, GC.GetAllocatedBytesForCurrentThread() - before);
    }

    [Fact]
    public void It_counts_as_a_constraint_solver_counts_on_boards_with_no_one_or_several_solutions()
    {
        const int Limit = 20;
        var counts = new int[Limit + 1];
        foreach (var board in RandomBoards.From(seed: 1, count: 200))
        {
            var expected = ConstraintSolver.Solutions(board, Limit);
            var found = SolutionCounter.Find(board, Limit);

            Assert.True(expected.Count == found.Count, $"{found.Count} solutions, not {expected.Count}: {board}, candidates {board.Candidates}");
            Assert.Equal(expected.Count, SolutionCounter.Count(board, Limit));
            if (expected.Count < Limit)
                Assert.Equal(expected.Order(), found.Select(grid => grid.ToString()).Order());
            counts[expected.Count]++;
        }

        // So that the sample cannot become one-sided unnoticed.
        Assert.All([counts[0], counts[1], counts[2..Limit].Sum()], share => Assert.True(share >= 20, string.Join(' ', counts)));
    }

    [Fact]
    public void It_tells_puzzles_from_what_has_no_or_several_solutions_and_gives_up_where_that_takes_long()
    {
        const int Most = 20_000;
        var puzzle = Generator.Make(7).Board.ToString();
        var first = puzzle.IndexOfAny([.. "123456789"]);
        var twice = puzzle.ToCharArray();
        twice[first == 8 ? 0 : first + 1] = puzzle[first];

        Assert.True(SolutionCounter.IsPuzzle(puzzle, Most));
        Assert.False(SolutionCounter.IsPuzzle(puzzle.Remove(first, 1).Insert(first, "."), Most));
        Assert.False(SolutionCounter.IsPuzzle(twice, Most));
        Assert.Null(SolutionCounter.IsPuzzle(new string('.', 81), 1));
    }

    private static void AssertFills(Board board, Solution grid)
    {
        Assert.All(board.Filled, cell => Assert.Equal(board.DigitAt(cell), grid[cell]));
        foreach (var house in HouseSet.All)
            Assert.Equal(9, house.Cells.Select(cell => grid[cell]).Distinct().Count());
    }
}
