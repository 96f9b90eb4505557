using Companion.Engine.Proofs;

namespace Companion.Engine.Tests.Proofs;

public class DeductionNameTests
{
    [Theory]
    [InlineData("naked-pair 58 subset r1c1 r1c2 in r1 b1 removes r1c5=5 r1c6=8")]
    [InlineData("hidden-single 7 single r5c3 in r5 places r5c3=7")]
    [InlineData("xy-wing 258 pivot r5c3 pincer r5c8 r4c1 removes r4c7=8")]
    [InlineData("own 123 pincer r1c1 pivot r2c2 pincer r3c3 places r1c1=1 removes r9c9=2")]
    public void A_deduction_is_named_by_its_rule_digits_cells_houses_and_conclusion(string name) =>
        Assert.Equal(name, DrawnDeduction.Read(name).ToString());

    [Fact]
    public void The_same_instance_with_the_same_conclusion_is_equal()
    {
        var one = DrawnDeduction.Read("naked-single 7 single r5c3 places r5c3=7 rests r5c3=-7");
        var same = DrawnDeduction.Read("naked-single 7 single r5c3 places r5c3=7");
        var another = DrawnDeduction.Read("naked-single 8 single r5c3 places r5c3=8");

        Assert.Equal(one, same);
        Assert.Equal(one.GetHashCode(), same.GetHashCode());
        Assert.NotEqual(one, another);
        Assert.False(one.Equals(null));
    }

    [Fact]
    public void A_deduction_knows_the_cells_of_its_pattern()
    {
        var wing = DrawnDeduction.Read("xy-wing 258 pivot r5c3 pincer r5c8 r4c1 removes r4c7=8");

        Assert.Equal(CellSet.Of(Cell.Of(5, 3), Cell.Of(5, 8), Cell.Of(4, 1)), wing.PatternCells);
        Assert.Equal([Role.Pivot, Role.Pincer, Role.Pincer], wing.Cells.Select(cell => cell.Role));
    }
}
