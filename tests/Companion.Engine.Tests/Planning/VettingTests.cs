using Companion.Engine.Planning;
using Companion.Engine.Rules;
using Companion.Engine.Search;
using Companion.Engine.Tests.Rules;

namespace Companion.Engine.Tests.Planning;

public sealed class VettingTests
{
    private static readonly Ladder Ladder = ShippedLadder.Ladder.WithoutLastResorts();

    // Source: the easy example of the code that goes with Russell & Norvig, "Artificial Intelligence: A Modern Approach".
    private const string Textbook = "003020600900305001001806400008102900700000008006708200002609500800203009005010300";

    [Fact]
    public void A_sound_puzzle_is_told_with_its_shape_its_hardness_and_its_featured_rules()
    {
        var vetting = Vet(Textbook, "xy-wing", "hidden-single");

        Assert.Equal((1, 32), (vetting.Solutions, vetting.Givens.Count));
        Assert.Empty(vetting.Faults);
        Assert.Empty(vetting.Corrections);
        Assert.Equal(Minimality.RedundantGivens(Puzzle.Parse(Textbook)), vetting.Redundant);
        Assert.Contains(GridSymmetry.HalfTurn, vetting.Symmetries);
        Assert.Equal(Steepness.Flat, vetting.Grade?.Steepness);
        Assert.Equal([("xy-wing", Need.Spare), ("hidden-single", Need.Needed)], vetting.Needs.Select(need => (need.Rule.Value, need.Need)));
    }

    [Fact]
    public void A_grid_with_several_solutions_tells_where_a_given_may_be_missing()
    {
        var vetting = Vet("00302060090030500100180640000810290070000000800670820000260950080020300900501030.".Replace('6', '.'));

        Assert.Equal(2, vetting.Solutions);
        Assert.Null(vetting.Puzzle);
        Assert.Null(vetting.Grade);
        Assert.IsType<BoardFault.SeveralSolutions>(Assert.Single(vetting.Faults));
    }

    [Fact]
    public void A_digit_that_stands_twice_is_told_with_the_corrections()
    {
        var vetting = Vet("3" + Textbook[1..]);

        Assert.Equal(0, vetting.Solutions);
        Assert.Contains(vetting.Faults, fault => fault is BoardFault.TwoEqualDigits);
        Assert.Contains(new(Cell.Parse("r1c1"), Digit.Of(3), null), vetting.Corrections);
    }

    [Fact]
    public void What_is_no_grid_at_all_is_told_and_has_no_corrections()
    {
        var vetting = Vet("hello");

        Assert.Equal(0, vetting.Solutions);
        Assert.NotEmpty(vetting.Faults);
        Assert.Empty(vetting.Corrections);
    }

    // Published as minimal: D. Berthier, DOI 10.5281/zenodo.17491457; G. Royle's puzzles of 17 clues, fewer than which none has
    // (McGuire, Tugemann, Civario, arXiv:1201.0749).
    [Theory]
    [InlineData("minimal-with-published-counts.tsv", 60)]
    [InlineData("seventeen-clue.txt", 150)]
    public void Puzzles_that_are_published_as_minimal_have_no_given_to_spare(string file, int oneOf)
    {
        Assert.All(OpenData.Puzzles(file, oneOf).AsParallel().Select(puzzle => Vet(puzzle, [])), vetting =>
        {
            Assert.Equal(1, vetting.Solutions);
            Assert.Empty(vetting.Redundant);
        });
    }

    private static Vetting Vet(string text, params string[] featured) =>
        Vetting.Of(BoardText.Read(text), Ladder, featured.Select(rule => new Engine.Proofs.RuleId(rule)), TestContext.Current.CancellationToken);
}
