using Companion.Engine.Rules;

namespace Companion.Engine.Tests.Rules;

public sealed class TwoBlockClaimingTests
{
    [Fact]
    public void Two_blocks_of_a_band_that_keep_a_digit_to_two_rows_clear_them_in_the_third_block() => RuleCheck.Finds(
        new TwoBlockClaiming(),
        Drawing.Board("""
            .  -6 -6 | -6 .  .  | . . .
            -6 -6 .  | -6 -6 .  | . . .
            -6 -6 -6 | -6 -6 -6 | . . .
            """),
        new Found("two-block-claiming 6 locked r1c1 r2c3 r1c5 r1c6 r2c6 in b1 b2", """
            . . . | . . . | 6 6 6
            . . . | . . . | 6 6 6
            """)
        {
            RestsOn = """
            . . . | . . . | . . .
            . . . | . . . | . . .
            6 6 6 | 6 6 6 | . . .
            """,
        });

    [Fact]
    public void Two_blocks_of_a_stack_that_keep_a_digit_to_two_columns_clear_them_in_the_third_block() => RuleCheck.Finds(
        new TwoBlockClaiming(),
        Drawing.Board("""
            . -4 . | . . . | . . .
            . -4 . | . . . | . . .
            . -4 . | . . . | . . .
            -------+-------+------
            . .  . | . . . | . . .
            . .  . | . . . | . . .
            . .  . | . . . | . . .
            -------+-------+------
            . -4 . | . . . | . . .
            . -4 . | . . . | . . .
            . -4 . | . . . | . . .
            """),
        new Found("two-block-claiming 4 locked r1c1 r1c3 r2c1 r2c3 r3c1 r3c3 r7c1 r7c3 r8c1 r8c3 r9c1 r9c3 in b1 b7", """
            . . . | . . . | . . .
            . . . | . . . | . . .
            . . . | . . . | . . .
            ------+-------+------
            4 . 4 | . . . | . . .
            4 . 4 | . . . | . . .
            4 . 4 | . . . | . . .
            """));

    [Fact]
    public void A_block_that_keeps_the_digit_to_one_of_the_rows_is_left_to_pointing() => RuleCheck.FindsNothing(
        new TwoBlockClaiming(),
        Drawing.Board("""
            .  .  .  | .  .  .  | . . .
            -6 -6 -6 | .  .  .  | . . .
            -6 -6 -6 | -6 -6 -6 | . . .
            """));

    [Fact]
    public void Two_blocks_that_keep_the_digit_to_different_rows_clear_nothing() => RuleCheck.FindsNothing(
        new TwoBlockClaiming(),
        Drawing.Board("""
            .  .  .  | .  .  .  | . . .
            .  .  .  | -6 -6 -6 | . . .
            -6 -6 -6 | .  .  .  | . . .
            """));

    [Fact]
    public void Nothing_counts_where_the_third_block_has_lost_the_digit_in_both_rows() => RuleCheck.FindsNothing(
        new TwoBlockClaiming(),
        Drawing.Board("""
            .  .  .  | .  .  .  | -6 -6 -6
            .  .  .  | .  .  .  | -6 -6 -6
            -6 -6 -6 | -6 -6 -6 | .  .  .
            """));
}
