using Companion.Engine.Rules;

namespace Companion.Engine.Tests.Rules;

public sealed class EmptyRectangleTests
{
    [Fact]
    public void A_cross_in_a_block_and_a_column_with_two_places_clear_the_cell_where_the_lines_of_both_meet() => RuleCheck.Finds(
        new EmptyRectangle(),
        Drawing.Board("""
            -4 -4 .  | . . . | -4 . .
            .  .  .  | . . . | .  . .
            -4 -4 .  | . . . | -4 . .
            ---------+-------+-------
            .  .  .  | . . . | -4 . .
            .  .  .  | . . . | .  . .
            .  .  .  | . . . | -4 . .
            ---------+-------+-------
            .  .  .  | . . . | -4 . .
            .  .  .  | . . . | -4 . .
            .  .  .  | . . . | -4 . .
            """),
        new Found("empty-rectangle 4 cross r1c3 r2c1 r2c2 r2c3 r3c3 between r2c7 end r5c7 in c7 b1", """
            . . . | . . . | . . .
            . . . | . . . | . . .
            . . . | . . . | . . .
            ------+-------+------
            . . . | . . . | . . .
            . . 4 | . . . | . . .
            """)
        {
            RestsOn = """
            4 4 . | . . . | 4 . .
            . . . | . . . | . . .
            4 4 . | . . . | 4 . .
            ------+-------+------
            . . . | . . . | 4 . .
            . . . | . . . | . . .
            . . . | . . . | 4 . .
            ------+-------+------
            . . . | . . . | 4 . .
            . . . | . . . | 4 . .
            . . . | . . . | 4 . .
            """,
            Links = "r2c7=4 = r5c7=4",
        });

    [Fact]
    public void The_cell_where_the_cross_meets_need_not_be_a_place() => RuleCheck.Finds(
        new EmptyRectangle(),
        Drawing.Board("""
            .  .  .  | .  .  .  | .  .  .
            .  .  .  | .  .  .  | .  .  .
            .  .  .  | .  .  .  | .  .  .
            ---------+----------+---------
            .  .  .  | -9 .  -9 | .  .  .
            .  .  .  | .  -9 .  | .  .  .
            .  .  .  | -9 -9 -9 | .  .  .
            ---------+----------+---------
            .  .  .  | .  .  .  | .  .  .
            .  -9 -9 | -9 .  -9 | -9 -9 -9
            """),
        new Found("empty-rectangle 9 cross r4c5 r5c4 r5c6 between r8c5 end r8c1 in r8 b5", """
            . . . | . . . | . . .
            . . . | . . . | . . .
            . . . | . . . | . . .
            ------+-------+------
            . . . | . . . | . . .
            9 . . | . . . | . . .
            """));

    [Fact]
    public void Two_places_in_the_block_are_left_to_two_strong_links() => RuleCheck.FindsNothing(
        new EmptyRectangle(),
        Drawing.Board("""
            -4 -4 .  | . . . | -4 . .
            .  -4 -4 | . . . | .  . .
            -4 -4 -4 | . . . | -4 . .
            ---------+-------+-------
            .  .  .  | . . . | -4 . .
            .  .  .  | . . . | .  . .
            .  .  .  | . . . | -4 . .
            ---------+-------+-------
            .  .  .  | . . . | -4 . .
            .  .  .  | . . . | -4 . .
            .  .  .  | . . . | -4 . .
            """));

    [Fact]
    public void A_place_off_the_cross_spoils_it() => RuleCheck.FindsNothing(
        new EmptyRectangle(),
        Drawing.Board("""
            -4 .  .  | . . . | -4 . .
            .  .  .  | . . . | .  . .
            -4 -4 .  | . . . | -4 . .
            ---------+-------+-------
            .  .  .  | . . . | -4 . .
            .  .  .  | . . . | .  . .
            .  .  .  | . . . | -4 . .
            ---------+-------+-------
            .  .  .  | . . . | -4 . .
            .  .  .  | . . . | -4 . .
            .  .  .  | . . . | -4 . .
            """));

    [Fact]
    public void Places_in_one_line_of_the_block_are_left_to_pointing() => RuleCheck.FindsNothing(
        new EmptyRectangle(),
        Drawing.Board("""
            -4 -4 -4 | . . . | -4 . .
            .  .  .  | . . . | .  . .
            -4 -4 -4 | . . . | -4 . .
            ---------+-------+-------
            .  .  .  | . . . | -4 . .
            .  .  .  | . . . | .  . .
            .  .  .  | . . . | -4 . .
            ---------+-------+-------
            .  .  .  | . . . | -4 . .
            .  .  .  | . . . | -4 . .
            .  .  .  | . . . | -4 . .
            """));

    [Fact]
    public void A_link_that_ends_in_the_band_of_the_block_clears_nothing() => RuleCheck.FindsNothing(
        new EmptyRectangle(),
        Drawing.Board("""
            -4 -4 .  | . . . | .  . .
            .  .  .  | . . . | .  . .
            -4 -4 .  | . . . | -4 . .
            ---------+-------+-------
            .  .  .  | . . . | -4 . .
            .  .  .  | . . . | -4 . .
            .  .  .  | . . . | -4 . .
            ---------+-------+-------
            .  .  .  | . . . | -4 . .
            .  .  .  | . . . | -4 . .
            .  .  .  | . . . | -4 . .
            """));
}
