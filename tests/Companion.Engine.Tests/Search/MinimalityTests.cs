using Companion.Engine.Search;

namespace Companion.Engine.Tests.Search;

public sealed class MinimalityTests
{
    // Source: SWI-Prolog manual, library(clpfd), "Sudoku", problem 1.
    private const string Sparse = "000000000000003085001020000000507000004000100090000000500000073002010000000040009";

    [Fact]
    public void A_puzzle_of_seventeen_clues_is_minimal()
    {
        // 17 are the fewest there can be: McGuire, Tugemann, Civario, arXiv:1201.0749.
        var puzzle = Puzzle.Parse(Sparse);

        Assert.Equal(17, puzzle.Board.Givens.Count);
        Assert.True(Minimality.IsMinimal(puzzle));
    }

    [Fact]
    public void A_given_added_from_the_solution_is_redundant()
    {
        var puzzle = Puzzle.Parse(Sparse);
        var more = Puzzle.Parse($"{puzzle.Solution.ToString()[0]}{Sparse[1..]}");

        Assert.True(Minimality.RedundantGivens(more).Contains(Cell.Parse("r1c1")));
        Assert.False(Minimality.IsMinimal(more));
    }

    [Fact]
    public void The_redundant_givens_are_those_without_which_a_constraint_solver_still_finds_one_solution()
    {
        var puzzle = Generator.Make(11, new() { Clues = 30 });
        var expected = CellSet.Of([.. puzzle.Board.Givens.Where(cell => ConstraintSolver.Solutions(Without(cell), limit: 2).Count == 1)]);

        Assert.NotEqual(CellSet.Empty, expected);
        Assert.NotEqual(puzzle.Board.Givens, expected);
        Assert.Equal(expected, Minimality.RedundantGivens(puzzle));

        Board Without(Cell cell) => Board.Parse(puzzle.Board.ToString().Remove(cell.Index, 1).Insert(cell.Index, "."));
    }
}
