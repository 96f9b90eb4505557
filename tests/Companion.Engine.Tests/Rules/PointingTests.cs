using Companion.Engine.Rules;

namespace Companion.Engine.Tests.Rules;

public sealed class PointingTests
{
    // common practice, no source
    [Fact]
    public void A_digit_with_two_places_in_a_block_that_share_a_row_goes_from_the_rest_of_the_row() => RuleCheck.Finds(
        new Pointing(),
        Drawing.Board("""
            -8 -8 -8 | . . . | . . .
            .  .  -8 | . . . | . . .
            -8 -8 -8 | . . . | . . .
            """),
        new Found("pointing 8 locked r2c1 r2c2 in b1", """
            . . . | . . . | . . .
            . . . | 8 8 8 | 8 8 8
            """)
        {
            RestsOn = """
            8 8 8 | . . . | . . .
            . . . | . . . | . . .
            8 8 8 | . . . | . . .
            """,
        });

    [Fact]
    public void A_digit_with_three_places_in_a_block_that_share_a_column_goes_from_the_rest_of_the_column() => RuleCheck.Finds(
        new Pointing(),
        Drawing.Board("""
            . . . | .  .  . | . . .
            . . . | .  .  . | . . .
            . . . | .  .  . | . . .
            ------+---------+------
            . . . | -3 -3 . | . . .
            . . . | -3 -3 . | . . .
            . . . | -3 -3 . | . . .
            """),
        new Found("pointing 3 locked r4c6 r5c6 r6c6 in b5", """
            . . . | . . 3 | . . .
            . . . | . . 3 | . . .
            . . . | . . 3 | . . .
            ------+-------+------
            . . . | . . . | . . .
            . . . | . . . | . . .
            . . . | . . . | . . .
            ------+-------+------
            . . . | . . 3 | . . .
            . . . | . . 3 | . . .
            . . . | . . 3 | . . .
            """));

    [Fact]
    public void Filled_cells_of_the_block_are_seen_and_not_rested_on() => RuleCheck.Finds(
        new Pointing(),
        Drawing.Board("""
            =1 =2 =3 | .  .  .  | . . .
            .  .  -8 | .  =1 -8 | . . .
            =4 -8 -8 | .  .  .  | . . .
            """),
        new Found("pointing 8 locked r2c1 r2c2 in b1", """
            . . . | . . . | . . .
            . . . | 8 . . | 8 8 8
            """)
        {
            RestsOn = """
            . . . | . . . | . . .
            . . . | . . . | . . .
            . 8 8 | . . . | . . .
            """,
        });

    [Fact]
    public void One_place_is_left_to_hidden_single() => RuleCheck.FindsNothing(
        new Pointing(),
        Drawing.Board("""
            -8 -8 -8 | . . . | . . .
            .  -8 -8 | . . . | . . .
            -8 -8 -8 | . . . | . . .
            """));

    [Fact]
    public void Places_in_two_rows_and_two_columns_point_nowhere() => RuleCheck.FindsNothing(
        new Pointing(),
        Drawing.Board("""
            -8 -8 -8 | . . . | . . .
            .  -8 -8 | . . . | . . .
            -8 .  -8 | . . . | . . .
            """));

    [Fact]
    public void Nothing_counts_where_the_rest_of_the_line_has_lost_the_digit() => RuleCheck.FindsNothing(
        new Pointing(),
        Drawing.Board("""
            -8 -8 -8 | .  .  .  | .  .  .
            .  .  -8 | -8 -8 -8 | -8 -8 -8
            -8 -8 -8 | .  .  .  | .  .  .
            """));
}
