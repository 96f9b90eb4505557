namespace Companion.Engine.Tests.Vocabulary;

public sealed class GridSymmetriesTests
{
    [Theory]
    [InlineData(GridSymmetry.HalfTurn, "r9c8")]
    [InlineData(GridSymmetry.QuarterTurn, "r2c9")]
    [InlineData(GridSymmetry.LeftRight, "r1c8")]
    [InlineData(GridSymmetry.TopBottom, "r9c2")]
    [InlineData(GridSymmetry.FallingDiagonal, "r2c1")]
    [InlineData(GridSymmetry.RisingDiagonal, "r8c9")]
    public void Each_takes_a_cell_to_its_image(GridSymmetry symmetry, string image)
    {
        Assert.Equal(image, symmetry.Image(Cell.Parse("r1c2")).ToString());
    }

    [Fact]
    public void Each_takes_all_cells_to_all_cells_and_houses_to_houses_and_comes_back_after_two_or_four_times()
    {
        foreach (var symmetry in GridSymmetries.All)
        {
            Assert.Equal(CellSet.All, CellSet.Of([.. CellSet.All.Select(cell => symmetry.Image(cell))]));
            Assert.All(HouseSet.All, house => Assert.False(CellSet.Of([.. house.Cells.Select(cell => symmetry.Image(cell))]).CommonHouses.IsEmpty));
            Assert.All(CellSet.All, cell => Assert.True(symmetry.Orbit(cell).Count is 1 or 2 or 4));
            Assert.All(CellSet.All, cell => Assert.All(symmetry.Orbit(cell), other => Assert.Equal(symmetry.Orbit(cell), symmetry.Orbit(other))));
        }
    }

    [Theory]
    [InlineData("xx...............................................................................", "")]
    [InlineData("........................................x........................................", "HalfTurn QuarterTurn LeftRight TopBottom FallingDiagonal RisingDiagonal")]
    [InlineData("x...............................................................................x", "HalfTurn FallingDiagonal RisingDiagonal")]
    [InlineData("x.......x........................................................................", "LeftRight")]
    [InlineData("x.......................................................................x........", "TopBottom")]
    [InlineData(".x.......x.......................................................................", "FallingDiagonal")]
    [InlineData(".......x.........x...............................................................", "RisingDiagonal")]
    [InlineData(".x................x........................................................x.....", "")]
    [InlineData(".x...............x.............................................x...............x.", "HalfTurn QuarterTurn")]
    public void The_symmetries_of_a_set_are_those_that_leave_it_as_it_is(string drawn, string expected)
    {
        var cells = CellSet.Of([.. CellSet.All.Where(cell => drawn[cell.Index] == 'x')]);

        Assert.Equal(expected, string.Join(' ', GridSymmetries.Of(cells)));
    }
}
