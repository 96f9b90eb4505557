using Companion.Engine.Planning;
using Companion.Engine.Rules;
using Companion.Engine.Tests.Rules;

namespace Companion.Engine.Tests.Planning;

public sealed class PuzzleGradeTests
{
    // Without the last resorts, which take long and of which a round looks for one only.
    private static readonly Ladder Ladder =
        ShippedLadder.Ladder.Without(ShippedLadder.Ladder.Rungs.Where(rung => rung.Rule.Effort == Effort.LastResort).Select(rung => rung.Family));

    [Fact]
    public void A_grade_does_not_depend_on_how_the_puzzle_is_turned_or_which_digit_is_called_what()
    {
        foreach (var puzzle in OwnPuzzles.All)
        {
            var board = Board.Parse(puzzle);
            Assert.All(Symmetry.All, symmetry => Assert.Equal(GradeOf(board), GradeOf(symmetry.Of(board))));
        }
    }

    [Fact]
    public void Each_round_costs_its_rung_and_the_vain_looks_below_it_and_less_where_several_ways_are_open()
    {
        // Source: P. Norvig, "Solving Any Sudoku Puzzle" (2006), grid1. A full house costs 2, a hidden single 4 after a look at the
        // full houses. H being 1 + 1/2 + 1/3 and so on: 3 x 2 + 4 x (H12 + H16 + H4) + 2 x (H5 + H4 + 4 + H3 + H2 + 1) = 65.7.
        var route = Route.From(Board.Parse("530070000600195000098000060800060003400803001700020006060000280000419005000080079"), Ladder, Stop);

        Assert.Equal(
            "hidden-single 12, hidden-single 16, full-house 5, full-house 4, full-house 1, full-house 1, full-house 1, full-house 1, "
            + "hidden-single 4, full-house 3, full-house 2, full-house 1",
            string.Join(", ", route.Rounds.Select(round => $"{round.Rung.Rule.Id} {round.Ways}")));
        Assert.Equal(
            new(Steepness.Flat, Work: 66, Ladder[new("hidden-single")], Rounds: 12, Gates: 4), PuzzleGrade.Of(route));
    }

    [Fact]
    public void The_second_of_two_ways_costs_half()
    {
        var board = Board.Parse("12345678.456789123789123456214365897365897214897214365531642978642978531.78531642");

        Assert.Equal(new(Steepness.Flat, Work: 3, Ladder[new("full-house")], Rounds: 1, Gates: 0), GradeOf(board)); // 2 x (1 + 1/2)
    }

    [Fact]
    public void A_round_with_one_way_on_is_a_gate_but_not_where_full_houses_are_all_that_is_left()
    {
        var last = Board.Parse("12345678.456789123789123456214365897365897214897214365531642978642978531978531642");
        // Source: P. Norvig, "Solving Any Sudoku Puzzle" (2006), grid1; its rounds stand above.
        var route = Route.From(Board.Parse("530070000600195000098000060800060003400803001700020006060000280000419005000080079"), Ladder, Stop);

        Assert.Equal(new(Steepness.Flat, Work: 2, Ladder[new("full-house")], Rounds: 1, Gates: 0), GradeOf(last));
        Assert.Equal((1, 1), (route.Rounds[4].Ways, PuzzleGrade.Of(route with { Rounds = [route.Rounds[4]] }).Gates));
        Assert.Equal((1, 0), (route.Rounds[^1].Ways, PuzzleGrade.Of(route with { Rounds = [route.Rounds[^1]] }).Gates));
    }

    [Fact]
    public void A_puzzle_that_the_ladder_does_not_solve_is_unclimbed_and_needs_no_rung_of_it()
    {
        var grade = PuzzleGrade.Of(Route.From(Board.Parse(OwnPuzzles.All[0]), Ladder.UpTo(new("hidden-triple")), Stop));

        Assert.Equal((Steepness.Unclimbed, null, null), (grade.Steepness, grade.Work, grade.Hardest));
        Assert.True(grade.Rounds > 0);
    }

    // The sets of P. Norvig's essay "Solving Any Sudoku Puzzle" (2006, 2021), and two community lists of hard puzzles.
    [Theory]
    [InlineData("essay-easy50.txt", "essay-top95.txt")]
    [InlineData("essay-top95.txt", "hardest-375-part.txt")]
    [InlineData("hard-1465-part.txt", "hardest-375-part.txt")]
    [InlineData("essay-easy50.txt", "hard-1465-part.txt")]
    public void A_list_known_to_be_easier_grades_easier(string easier, string harder)
    {
        var below = Works(easier);
        var above = Works(harder);

        Assert.True(Median(below) <= Median(above), $"{easier} {Median(below)}, {harder} {Median(above)}");
        Assert.True(RankTest(below, above) > 4, $"{easier} and {harder}: {RankTest(below, above)}");
    }

    // Source of the collection: D. Berthier, DOI 10.5281/zenodo.17491457, minimal puzzles drawn with a controlled bias.
    [Fact]
    public void Each_word_but_the_last_holds_about_a_quarter_of_the_minimal_puzzles_that_the_ladder_solves()
    {
        var grades = Grades("minimal-with-published-counts.tsv", oneOf: 20).Where(grade => grade.Work is not null).ToList();

        foreach (var word in Enum.GetValues<Steepness>().Except([Steepness.Unclimbed]))
            Assert.InRange(grades.Count(grade => grade.Steepness == word) / (double)grades.Count, 0.15, 0.35);
    }

    private static CancellationToken Stop => TestContext.Current.CancellationToken;

    private static PuzzleGrade GradeOf(Board board) => PuzzleGrade.Of(Route.From(board, Ladder, Stop));

    private static List<PuzzleGrade> Grades(string fileName, int oneOf) =>
        [.. OpenData.Puzzles(fileName, oneOf).AsParallel().Select(puzzle => GradeOf(Board.Parse(puzzle)))];

    // A puzzle that is not solved is harder than all that are.
    private static List<int> Works(string fileName) =>
        [.. Grades(fileName, oneOf: OpenData.Lines(fileName).Length / 100 + 1).Select(grade => grade.Work ?? int.MaxValue).Order()];

    private static int Median(List<int> sorted) => sorted[sorted.Count / 2];

    // Mann and Whitney's U in standard deviations: above 4 by chance once in 30,000 times. The constants from memory.
    private static double RankTest(List<int> below, List<int> above)
    {
        var pairs = (double)below.Count * above.Count;
        var wins = below.Sum(one => above.Sum(other => one < other ? 1 : one == other ? 0.5 : 0));
        return (wins - pairs / 2) / Math.Sqrt(pairs * (below.Count + above.Count + 1) / 12);
    }
}
