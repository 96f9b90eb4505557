using Companion.Engine.Rules;

namespace Companion.Engine.Tests.Rules;

public sealed class XYZWingTests
{
    [Fact]
    public void Pincers_in_the_block_and_the_row_of_the_pivot_clear_the_cells_that_see_all_three() => RuleCheck.Finds(
        new XYZWing(),
        Drawing.Board("""
            23  . . | . .  . | . . .
            123 . . | . 13 . | . . .
            """),
        new Found("xyz-wing 123 pivot r2c1 pincer r2c5 r1c1", """
            . . . | . . . | . . .
            . 3 3 | . . . | . . .
            """)
        {
            RestsOn = """
            1456789 . . | . .       . | . . .
            456789  . . | . 2456789 . | . . .
            """,
            Links = "r2c1=1 - r2c5=1, r2c1=2 - r1c1=2",
        });

    [Fact]
    public void Pincers_in_the_block_and_the_column_of_the_pivot_clear_the_cells_that_see_all_three() => RuleCheck.Finds(
        new XYZWing(),
        Drawing.Board("""
            . . . | . .   .  | . . .
            . . . | . .   .  | . . .
            . . . | . .   .  | . . .
            ------+----------+------
            . . . | . .   58 | . . .
            . . . | . 568 .  | . . .
            . . . | . .   .  | . . .
            ------+----------+------
            . . . | . .   .  | . . .
            . . . | . 56  .  | . . .
            """),
        new Found("xyz-wing 568 pivot r5c5 pincer r8c5 r4c6", """
            . . . | . . . | . . .
            . . . | . . . | . . .
            . . . | . . . | . . .
            ------+-------+------
            . . . | . 5 . | . . .
            . . . | . . . | . . .
            . . . | . 5 . | . . .
            """));

    [Fact]
    public void Pincers_in_the_row_and_the_column_of_the_pivot_share_no_further_cell_with_it() => RuleCheck.FindsNothing(
        new XYZWing(),
        Drawing.Board("""
            123 . . | . 13 . | . . .
            .   . . | . .  . | . . .
            .   . . | . .  . | . . .
            --------+--------+------
            23  . . | . .  . | . . .
            """));

    [Fact]
    public void A_pivot_with_two_candidates_is_left_to_xy_wing() => RuleCheck.FindsNothing(
        new XYZWing(),
        Drawing.Board("""
            23 . . | . .  . | . . .
            12 . . | . 13 . | . . .
            """));

    [Fact]
    public void Three_cells_in_one_house_are_left_to_naked_triple() => RuleCheck.FindsNothing(
        new XYZWing(),
        Drawing.Board("""
            23  . 13 | . . . | . . .
            123 . .  | . . . | . . .
            """));

    [Fact]
    public void A_pincer_with_a_digit_that_the_pivot_lacks_spoils_it() => RuleCheck.FindsNothing(
        new XYZWing(),
        Drawing.Board("""
            24  . . | . .  . | . . .
            123 . . | . 13 . | . . .
            """));
}
