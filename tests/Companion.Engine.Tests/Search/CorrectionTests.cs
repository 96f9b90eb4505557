using Companion.Engine.Search;

namespace Companion.Engine.Tests.Search;

public sealed class CorrectionTests
{
    private static readonly Puzzle Puzzle = Generator.Make(12);

    [Fact]
    public void A_mistyped_given_is_among_the_corrections_and_each_of_them_gives_one_solution()
    {
        var random = new Random(5);
        for (var time = 0; time < 20; time++)
        {
            var given = Puzzle.Board.Givens.ElementAt(random.Next(Puzzle.Board.Givens.Count));
            var right = Puzzle.Solution[given];
            var wrong = Digit.Of((right.Value + random.Next(8)) % 9 + 1);
            var mistyped = Write(Puzzle.Board.ToString(), given, wrong);
            var corrections = Correction.Of(new(mistyped), TestContext.Current.CancellationToken);

            // The wrong digit may by chance make another puzzle; then nothing has to be put right, and yet the right one is there.
            Assert.Contains(new(given, wrong, right), corrections);
            Assert.Equal(Literally(mistyped).ToHashSet(), corrections.ToHashSet());
            Assert.Equal(corrections.Length, corrections.Distinct().Count());
        }
    }

    [Fact]
    public void A_constraint_solver_finds_one_solution_after_each_correction()
    {
        var given = Puzzle.Board.Givens.First;
        var missing = Write(Puzzle.Board.ToString(), given, null);
        var corrections = Correction.Of(new(missing), TestContext.Current.CancellationToken);

        Assert.NotEmpty(corrections);
        Assert.All(corrections.Take(12), correction =>
            Assert.Single(ConstraintSolver.Solutions(Board.Parse(Write(missing, correction.Cell, correction.To)), limit: 2)));
    }

    [Fact]
    public void A_given_left_out_of_a_symmetric_puzzle_is_looked_for_first_where_it_makes_the_givens_symmetric()
    {
        var minimal = Puzzle.Board.Givens.First(cell => SolutionCounter.Count(Write(Puzzle.Board.ToString(), cell, null)) > 1);
        var corrections = Correction.Of(new(Write(Puzzle.Board.ToString(), minimal, null)), TestContext.Current.CancellationToken);

        Assert.Equal((minimal, null), (corrections[0].Cell, corrections[0].From));
        Assert.Contains(new(minimal, null, Puzzle.Solution[minimal]), corrections.TakeWhile(correction => correction.Cell == minimal));
    }

    [Fact]
    public void A_letter_in_a_cell_is_corrected_as_a_digit_is()
    {
        var given = Puzzle.Board.Givens.First;
        var typed = Puzzle.Board.ToString().Remove(given.Index, 1).Insert(given.Index, "O");

        Assert.Contains(new(given, null, Puzzle.Solution[given]), Correction.Of(new(typed), TestContext.Current.CancellationToken));
    }

    [Theory]
    [InlineData("")]
    [InlineData("123")]
    [InlineData(".................................................................................")]
    public void There_is_none_where_one_change_is_not_enough(string text)
    {
        Assert.Empty(Correction.Of(new(text), TestContext.Current.CancellationToken));
    }

    private static IEnumerable<Correction> Literally(string text) =>
        from cell in CellSet.All
        from to in Enumerable.Range(0, 10)
        let typed = text[cell.Index]
        where typed != (to == 0 ? '.' : (char)('0' + to))
        let changed = Write(text, cell, to == 0 ? null : Digit.Of(to))
        where Puzzle.Read(new(changed)).IsGood
        select new Correction(cell, typed == '.' ? null : Digit.Of(typed - '0'), to == 0 ? null : Digit.Of(to));

    private static string Write(string grid, Cell cell, Digit? digit) =>
        grid.Remove(cell.Index, 1).Insert(cell.Index, digit is { } written ? $"{written.Value}" : ".");
}
