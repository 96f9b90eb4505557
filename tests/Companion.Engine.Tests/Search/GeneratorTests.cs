using Companion.Engine.Search;

namespace Companion.Engine.Tests.Search;

public sealed class GeneratorTests
{
    private static readonly GeneratorOptions Free = new() { Symmetry = null };

    public static TheoryData<GridSymmetry> Symmetries => [.. GridSymmetries.All];

    public static TheoryData<ulong> Seeds => [.. Enumerable.Range(0, 30).Select(seed => (ulong)seed)];

    [Fact]
    public void The_same_seed_makes_the_same_puzzle_for_ever()
    {
        // What seed 1 makes was written down when the generator was: run sheets and shows name puzzles by their seed.
        Assert.Equal("7..9....8.5...61.9.6..1.7...3.6.....5..891..7.....3.8...5.6..4.6.37...9.4....5..1", Generator.Make(1).Board.ToString());
        Assert.Equal("7.1.....8.....6...9623..7..8.....91.5..8.14.7...5.3....7..6.......7...9......5..1", Generator.Make(1, Free).Board.ToString());
    }

    [Fact]
    public void A_beginning_of_which_nobody_knows_whether_it_leads_anywhere_is_dropped()
    {
        // Whether the first digits that this seed throws have a solution takes minutes to find out.
        Assert.Equal(1, SolutionCounter.Count(Generator.Make(4782505974359694215, Free).Board));
    }

    [Fact]
    public void Different_seeds_make_different_puzzles()
    {
        Assert.Equal(30, Seeds.Select(seed => Generator.Make(seed).Board.ToString()).Distinct().Count());
    }

    [Theory]
    [MemberData(nameof(Seeds))]
    public void Every_puzzle_has_one_solution(ulong seed)
    {
        Assert.Equal(1, SolutionCounter.Count(Generator.Make(seed).Board));
        Assert.Equal(1, SolutionCounter.Count(Generator.Make(seed, Free).Board));
    }

    [Fact]
    public void A_constraint_solver_finds_the_same_only_solution()
    {
        for (var seed = 100ul; seed < 120; seed++)
        {
            var puzzle = Generator.Make(seed, new() { Symmetry = seed % 2 == 0 ? GridSymmetry.HalfTurn : null });
            Assert.Equal([puzzle.Solution.ToString()], ConstraintSolver.Solutions(puzzle.Board, limit: 2));
        }
    }

    [Theory]
    [MemberData(nameof(Symmetries))]
    public void Givens_are_symmetric_where_that_is_asked_and_no_cells_that_belong_together_are_left_that_could_go(GridSymmetry symmetry)
    {
        for (var seed = 0ul; seed < 8; seed++)
        {
            var puzzle = Generator.Make(seed, new() { Symmetry = symmetry });

            Assert.Contains(symmetry, GridSymmetries.Of(puzzle.Board.Givens));
            Assert.All(puzzle.Board.Givens, cell => Assert.True(SolutionCounter.Count(Without(puzzle, symmetry.Orbit(cell))) > 1));
        }
    }

    [Theory]
    [MemberData(nameof(Seeds))]
    public void Without_symmetry_no_given_is_left_that_could_go(ulong seed)
    {
        Assert.True(Minimality.IsMinimal(Generator.Make(seed, Free)));
    }

    [Theory]
    [InlineData(40, false)]
    [InlineData(33, false)]
    [InlineData(40, true)]
    [InlineData(33, true)]
    public void It_stops_at_the_number_of_clues_asked(int clues, bool symmetric)
    {
        var givens = Generator.Make(5, new() { Symmetry = symmetric ? GridSymmetry.HalfTurn : null, Clues = clues }).Board.Givens;

        // A symmetric pair goes at once, so that one may be left over; fewer than asked never are.
        Assert.InRange(givens.Count, clues, symmetric ? clues + 1 : clues);
    }

    [Theory]
    [MemberData(nameof(Symmetries))]
    public void There_are_never_fewer_givens_than_asked(GridSymmetry symmetry)
    {
        foreach (var seed in Seeds.Select(row => row.Data))
            Assert.True(Generator.Make(seed, new() { Symmetry = symmetry, Clues = 34 }).Board.Givens.Count >= 34);
    }

    private static string Without(Puzzle puzzle, CellSet cells) => string.Concat(CellSet.All.Select(cell =>
        cells.Contains(cell) || puzzle.Board.DigitAt(cell) is not { } digit ? "." : $"{digit}"));
}
