using Companion.Engine.Rules;

namespace Companion.Engine.Tests.Rules;

public sealed class NakedPairTests
{
    [Fact]
    public void A_pair_inside_one_block_and_one_row_clears_both_houses() => RuleCheck.Finds(
        new NakedPair(),
        Drawing.Board("""
            58 58 . | . . . | . . .
            """),
        new Found("naked-pair 58 subset r1c1 r1c2 in r1 b1", """
            .  .  58 | 58 58 58 | 58 58 58
            58 58 58 | .  .  .  | .  .  .
            58 58 58 | .  .  .  | .  .  .
            """)
        {
            RestsOn = """
            1234679 1234679 . | . . . | . . .
            """,
        });

    // common practice, no source
    [Fact]
    public void A_pair_inside_one_block_and_one_column_clears_both_houses() => RuleCheck.Finds(
        new NakedPair(),
        Drawing.Board("""
            . .  . | . . . | . . .
            . .  . | . . . | . . .
            . .  . | . . . | . . .
            -------+-------+------
            . 29 . | . . . | . . .
            . .  . | . . . | . . .
            . 29 . | . . . | . . .
            """),
        new Found("naked-pair 29 subset r4c2 r6c2 in c2 b4", """
            .  29 .  | . . . | . . .
            .  29 .  | . . . | . . .
            .  29 .  | . . . | . . .
            ---------+-------+------
            29 .  29 | . . . | . . .
            29 29 29 | . . . | . . .
            29 .  29 | . . . | . . .
            ---------+-------+------
            .  29 .  | . . . | . . .
            .  29 .  | . . . | . . .
            .  29 .  | . . . | . . .
            """));

    [Fact]
    public void A_pair_in_two_blocks_clears_their_common_row() => RuleCheck.Finds(
        new NakedPair(),
        Drawing.Board("""
            . .  . | .  .  . | . .  .
            . 17 . | -1 .  . | . 17 .
            """),
        new Found("naked-pair 17 subset r2c2 r2c8 in r2", """
            .  . .  | . .  .  | .  . .
            17 . 17 | 7 17 17 | 17 . 17
            """));

    [Fact]
    public void A_pair_in_no_common_line_clears_its_block() => RuleCheck.Finds(
        new NakedPair(),
        Drawing.Board("""
            58 . .  | . . . | . . .
            .  . .  | . . . | . . .
            .  . 58 | . . . | . . .
            """),
        new Found("naked-pair 58 subset r1c1 r3c3 in b1", """
            .  58 58 | . . . | . . .
            58 58 58 | . . . | . . .
            58 58 .  | . . . | . . .
            """));

    [Fact]
    public void Cells_that_differ_in_a_candidate_are_no_pair() => RuleCheck.FindsNothing(
        new NakedPair(),
        Drawing.Board("""
            58 59 . | . . . | . . .
            """));

    [Fact]
    public void Equal_cells_in_no_common_house_are_no_pair() => RuleCheck.FindsNothing(
        new NakedPair(),
        Drawing.Board("""
            58 . . | .  . . | . . .
            .  . . | .  . . | . . .
            .  . . | .  . . | . . .
            -------+--------+------
            .  . . | 58 . . | . . .
            """));

    [Fact]
    public void Nothing_counts_where_both_digits_are_gone_from_what_the_pair_sees() => RuleCheck.FindsNothing(
        new NakedPair(),
        Drawing.Board("""
            58  58  -58 | -58 -58 -58 | -58 -58 -58
            -58 -58 -58 | .   .   .   | .   .   .
            -58 -58 -58 | .   .   .   | .   .   .
            """));
}
