using Companion.Engine.Rules;

namespace Companion.Engine.Tests.Rules;

public sealed class ClaimingTests
{
    [Fact]
    public void A_digit_with_two_places_in_a_row_that_share_a_block_goes_from_the_rest_of_the_block() => RuleCheck.Finds(
        new Claiming(),
        Drawing.Board("""
            . . .  | .  .  .  | .  .  .
            . . -8 | -8 -8 -8 | -8 -8 -8
            """),
        new Found("claiming 8 locked r2c1 r2c2 in r2", """
            8 8 8 | . . . | . . .
            . . . | . . . | . . .
            8 8 8 | . . . | . . .
            """)
        {
            RestsOn = """
            . . . | . . . | . . .
            . . . | 8 8 8 | 8 8 8
            """,
        });

    [Fact]
    public void A_digit_with_three_places_in_a_column_that_share_a_block_goes_from_the_rest_of_the_block() => RuleCheck.Finds(
        new Claiming(),
        Drawing.Board("""
            . . . | . . -3 | . . .
            . . . | . . -3 | . . .
            . . . | . . -3 | . . .
            ------+--------+------
            . . . | . . .  | . . .
            . . . | . . .  | . . .
            . . . | . . .  | . . .
            ------+--------+------
            . . . | . . -3 | . . .
            . . . | . . -3 | . . .
            . . . | . . -3 | . . .
            """),
        new Found("claiming 3 locked r4c6 r5c6 r6c6 in c6", """
            . . . | . . . | . . .
            . . . | . . . | . . .
            . . . | . . . | . . .
            ------+-------+------
            . . . | 3 3 . | . . .
            . . . | 3 3 . | . . .
            . . . | 3 3 . | . . .
            """));

    [Fact]
    public void Filled_cells_of_the_line_are_seen_and_not_rested_on() => RuleCheck.Finds(
        new Claiming(),
        Drawing.Board("""
            .  .  .  | .  .  .  | .  .  .
            .  .  -8 | =1 =2 =3 | =4 -8 -8
            =1 -8 .  | .  .  .  | .  .  .
            """),
        new Found("claiming 8 locked r2c1 r2c2 in r2", """
            8 8 8 | . . . | . . .
            . . . | . . . | . . .
            . . 8 | . . . | . . .
            """)
        {
            RestsOn = """
            . . . | . . . | . . .
            . . . | . . . | . 8 8
            """,
        });

    [Fact]
    public void One_place_is_left_to_hidden_single() => RuleCheck.FindsNothing(
        new Claiming(),
        Drawing.Board("""
            . -8 -8 | -8 -8 -8 | -8 -8 -8
            """));

    [Fact]
    public void Places_in_two_blocks_claim_nothing() => RuleCheck.FindsNothing(
        new Claiming(),
        Drawing.Board("""
            . -8 -8 | . -8 -8 | -8 -8 -8
            """));

    [Fact]
    public void Nothing_counts_where_the_rest_of_the_block_has_lost_the_digit() => RuleCheck.FindsNothing(
        new Claiming(),
        Drawing.Board("""
            -8 -8 -8 | .  .  .  | .  .  .
            .  .  -8 | -8 -8 -8 | -8 -8 -8
            -8 -8 -8 | .  .  .  | .  .  .
            """));
}
