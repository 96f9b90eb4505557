using Companion.Engine.Rules;

namespace Companion.Engine.Tests.Rules;

public sealed class XYWingTests
{
    [Fact]
    public void Pincers_in_the_row_and_the_column_of_the_pivot_clear_the_cell_that_sees_both() => RuleCheck.Finds(
        new XYWing(),
        Drawing.Board("""
            . .  . | . .  . | . . .
            . 12 . | . 13 . | . . .
            . .  . | . .  . | . . .
            -------+--------+------
            . 23 . | . .  . | . . .
            """),
        new Found("xy-wing 123 pivot r2c2 pincer r2c5 r4c2", """
            . . . | . . . | . . .
            . . . | . . . | . . .
            . . . | . . . | . . .
            ------+-------+------
            . . . | . 3 . | . . .
            """)
        {
            RestsOn = """
            . .       . | . .       . | . . .
            . 3456789 . | . 2456789 . | . . .
            . .       . | . .       . | . . .
            ------------+-------------+------
            . 1456789 . | . .       . | . . .
            """,
            Links = "r2c2=1 - r2c5=1, r2c2=2 - r4c2=2",
        });

    [Fact]
    public void Pincers_in_the_block_and_the_row_of_the_pivot_clear_five_cells() => RuleCheck.Finds(
        new XYWing(),
        Drawing.Board("""
            78 .  . | . 48 . | . . .
            .  47 . | . .  . | . . .
            """),
        new Found("xy-wing 478 pivot r1c1 pincer r2c2 r1c5", """
            . 4 4 | . . . | . . .
            . . . | 4 4 4 | . . .
            """));

    [Fact]
    public void One_pivot_may_have_several_pairs_of_pincers() => RuleCheck.Finds(
        new XYWing(),
        Drawing.Board("""
            12 . . | . 13 . | . 14 .
            .  . . | . .  . | . .  .
            .  . . | . .  . | . .  .
            -------+--------+-------
            24 . . | . .  . | . .  .
            23 . . | . .  . | . .  .
            """),
        new Found("xy-wing 123 pivot r1c1 pincer r1c5 r5c1", """
            . . . | . . . | . . .
            . . . | . . . | . . .
            . . . | . . . | . . .
            ------+-------+------
            . . . | . . . | . . .
            . . . | . 3 . | . . .
            """),
        new Found("xy-wing 124 pivot r1c1 pincer r1c8 r4c1", """
            . . . | . . . | . . .
            . . . | . . . | . . .
            . . . | . . . | . . .
            ------+-------+------
            . . . | . . . | . 4 .
            """));

    // common practice, no source
    [Fact]
    public void A_cell_with_three_candidates_is_never_part_of_it() => RuleCheck.FindsNothing(
        new XYWing(),
        Drawing.Board("""
            . .  . | . .   . | . . .
            . 12 . | . 123 . | . . .
            . .  . | . .   . | . . .
            -------+---------+------
            . 23 . | . .   . | . . .
            """));

    [Fact]
    public void Three_cells_in_one_house_are_left_to_naked_triple() => RuleCheck.FindsNothing(
        new XYWing(),
        Drawing.Board("""
            12 .  . | . . . | . . .
            .  13 . | . . . | . . .
            .  23 . | . . . | . . .
            """));

    [Fact]
    public void Three_pairs_with_four_digits_are_no_wing() => RuleCheck.FindsNothing(
        new XYWing(),
        Drawing.Board("""
            . .  . | . .  . | . . .
            . 12 . | . 13 . | . . .
            . .  . | . .  . | . . .
            -------+--------+------
            . 24 . | . .  . | . . .
            """));

    [Fact]
    public void Two_pincers_with_the_same_digit_of_the_pivot_are_no_wing() => RuleCheck.FindsNothing(
        new XYWing(),
        Drawing.Board("""
            . .  . | . .  . | . . .
            . 12 . | . 13 . | . . .
            . .  . | . .  . | . . .
            -------+--------+------
            . 13 . | . .  . | . . .
            """));

    [Fact]
    public void Nothing_counts_where_no_cell_that_sees_both_pincers_has_the_digit() => RuleCheck.FindsNothing(
        new XYWing(),
        Drawing.Board("""
            . .  . | . .  . | . . .
            . 12 . | . 13 . | . . .
            . .  . | . .  . | . . .
            -------+--------+------
            . 23 . | . -3 . | . . .
            """));
}
