using Companion.Engine.Proofs;

namespace Companion.Engine.Tests.Proofs;

public class WhereToLookTests
{
    [Theory]
    [InlineData("the named house", "own 5 subset r1c1 r1c2 in r1 removes r1c9=5", "r1")]
    [InlineData("the named block, though a row holds the pattern too", "own 5 locked r1c1 r1c2 in b1 removes r1c9=5", "b1")]
    [InlineData("a house around the cells where none is named", "own 5 pivot r1c1 pincer r1c5 removes r1c9=5", "r1")]
    [InlineData("the band of all base rows", "own 5 base r1c1 r1c5 r3c1 r3c5 in r1 r3 removes r9c5=5", "band1")]
    [InlineData("the stack of all base columns", "own 5 base r1c4 r5c4 r1c6 r5c6 in c4 c6 removes r5c9=5", "stack2")]
    [InlineData("a band that holds a wing", "own 5 pivot r4c1 pincer r5c2 r4c9 removes r5c9=5", "band2")]
    [InlineData("the first base line where no chute holds all", "own 5 base r2c3 r2c8 r7c3 r7c8 in r2 r7 removes r1c3=5", "r2")]
    [InlineData("the block of the first cell where nothing else holds", "own 5 pivot r2c3 pincer r2c8 r7c3 removes r7c8=5", "b1")]
    public void The_eye_is_sent_to(string what, string drawn, string region) =>
        Assert.True(Region.Parse(region) == WhereToLook.Find(Board.Blank, DrawnDeduction.Read(drawn)), what);

    [Fact]
    public void The_last_open_cell_of_a_house_is_sought_in_the_whole_band()
    {
        var (board, deduction) = OneOfEachRule.On("full-house");

        Assert.Equal(Region.Parse("band2"), WhereToLook.Find(board, deduction));
    }

    [Fact]
    public void A_single_without_a_house_is_sought_in_the_tightest_house_that_does_not_point_at_it()
    {
        // Row 5 has one open cell, block 4 has three, column 3 seven.
        var board = Board.Parse("""
            .........
            .........
            .........
            .53......
            12.345689
            68.......
            .........
            .........
            .........
            """);

        var region = WhereToLook.Find(board, DrawnDeduction.Read("naked-single 7 single r5c3 places r5c3=7 rests r5c3=-7"));

        Assert.Equal(Region.Parse("b4"), region);
    }
}
