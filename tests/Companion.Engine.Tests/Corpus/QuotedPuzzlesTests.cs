using Companion.Engine.Search;

namespace Companion.Engine.Tests.Corpus;

/// <summary>Puzzles and figures quoted from publications, so that a clone without the data folder is checked against the outside too.</summary>
public sealed class QuotedPuzzlesTests
{
    // Source: P. Norvig, "Solving Any Sudoku Puzzle" (2006, 2021), grid1 and grid2. grid1 is also the GLPK manual's example.
    private const string Grid1 = "530070000600195000098000060800060003400803001700020006060000280000419005000080079";
    private const string Grid2 = "400000805030000000000700000020000060000080400000010000000603070500200000104000000";

    // Source: the easy example of the code that goes with Russell & Norvig, "Artificial Intelligence: A Modern Approach".
    private const string Textbook = "003020600900305001001806400008102900700000008006708200002609500800203009005010300";

    // Source: GLPK's "a hard Sudoku puzzle which causes branching".
    private const string Branching = "100000700020000500600380000078000000000609000000000140000025009003000060004000002";

    // Source: SWI-Prolog manual, library(clpfd), problem 1.
    private const string Prolog = "000000000000003085001020000000507000004000100090000000500000073002010000000040009";

    // Source: OR-Tools, sudoku example.
    private const string OrTools = "060050020000300090700600010006030400004070100005090800040001006030008000020040050";

    // Source: the harder example of the code that goes with Russell & Norvig.
    private const string TextbookHarder = "417369805030000000000700000020000060000080400000010000000603070500200000104000000";

    [Theory]
    [InlineData(Textbook, "483921657967345821251876493548132976729564138136798245372689514814253769695417382")]
    [InlineData(Prolog, "987654321246173985351928746128537694634892157795461832519286473472319568863745219")]
    [InlineData(Branching, "189562734327194586645387921578241693431679258962853147816425379293718465754936812")]
    public void A_puzzle_has_the_published_solution_and_no_other(string puzzle, string solution)
    {
        Assert.Equal([solution], SolutionCounter.Find(Board.Parse(puzzle)).Select(grid => grid.ToString()));
    }

    [Theory]
    [InlineData(Grid1)]
    [InlineData(Grid2)]
    [InlineData(OrTools)]
    [InlineData(TextbookHarder)]
    public void A_published_puzzle_has_one_solution(string puzzle)
    {
        Assert.Equal(1, SolutionCounter.Count(puzzle));
    }

    [Fact]
    public void In_grid1_r5c5_can_only_be_5_and_then_r5c2_only_2()
    {
        var board = Board.Parse(Grid1);
        Assert.Equal(DigitSet.Parse("5"), board[Cell.Parse("r5c5")]);
        Assert.NotEqual(DigitSet.Parse("2"), board[Cell.Parse("r5c2")]);

        board = board.Place(Candidate.Parse("r5c5=5"));
        Assert.Equal(DigitSet.Parse("2"), board[Cell.Parse("r5c2")]);
    }

    [Fact]
    public void The_two_kinds_of_singles_take_grid2_from_17_filled_cells_to_20()
    {
        var board = Board.Parse(Grid2);

        Assert.Equal(17, board.Filled.Count);
        Assert.Equal(20, Fixpoint.Of(board, RuleSets.Singles).Filled.Count);
    }

    [Fact]
    public void Naked_singles_alone_solve_the_textbook_example()
    {
        Assert.Equal(
            "483921657967345821251876493548132976729564138136798245372689514814253769695417382",
            Fixpoint.Of(Board.Parse(Textbook), RuleSets.NakedSingles).ToString());
    }

    [Fact]
    public void Singles_locked_candidates_and_subsets_stall_on_the_branching_example()
    {
        Assert.False(Fixpoint.Of(Board.Parse(Branching), RuleSets.Subsets).IsFull);
    }

    // Source: the first rows of the collection of D. Berthier, DOI 10.5281/zenodo.17491457: facts quoted, not the file.
    [Theory]
    [InlineData("...456..9..6.......891..45.2.........7..9.....35......397...5.......4.72.....5361", 26, 206, 81, 0, 0)]
    [InlineData("..34......5...912.7...2.....1.5.7..86...9...7.......34..2.............9.9...61.75", 24, 207, 31, 170, 164)]
    public void A_puzzle_has_the_five_published_counts(
        string puzzle, int clues, int candidatesAtStart, int filledAfterSingles, int candidatesAfterSingles, int candidatesAfterLocked)
    {
        Assert.Equal(
            new(clues, candidatesAtStart, filledAfterSingles, candidatesAfterSingles, candidatesAfterLocked),
            PuzzleCounts.Of(Puzzle.Parse(puzzle)));
    }
}
