using Companion.Engine.Rules;

namespace Companion.Engine.Tests.Rules;

public sealed class XYChainTests
{
    [Fact]
    public void Four_cells_in_a_row_clear_what_sees_both_ends() => RuleCheck.Finds(
        new XYChain(),
        Drawing.Board("""
            12 .  .  | .  23 .  | . . .
            .  .  .  | .  .  .  | . . .
            .  .  .  | .  .  .  | . . .
            ---------+----------+------
            .  14 .  | .  34 .  | . . .
            """),
        new Found("xy-chain 1234 chainend r1c1 chain r1c5 r4c5 chainend r4c2", """
            . 1 . | . . . | . . .
            . 1 . | . . . | . . .
            . 1 . | . . . | . . .
            ------+-------+------
            1 . . | . . . | . . .
            1 . . | . . . | . . .
            1 . . | . . . | . . .
            """)
        {
            Links = "r1c1=1 = r1c1=2, r1c1=2 - r1c5=2, r1c5=2 = r1c5=3, r1c5=3 - r4c5=3, r4c5=3 = r4c5=4, r4c5=4 - r4c2=4, "
                + "r4c2=4 = r4c2=1",
            RestsOn = """
            3456789 .       . | . 1456789 . | . . .
            .       .       . | . .       . | . . .
            .       .       . | . .       . | . . .
            ------------------+-------------+------
            .       2356789 . | . 1256789 . | . . .
            """,
        });

    [Fact]
    public void Five_cells_count_too_and_need_not_have_a_digit_each() => RuleCheck.Finds(
        new XYChain(),
        Drawing.Board("""
            12 .  .  | .  23 .  | . . .
            .  .  .  | .  .  .  | . . .
            .  .  .  | .  .  .  | . . .
            ---------+----------+------
            .  .  .  | .  34 .  | . 24 .
            .  .  .  | .  .  .  | . . .
            .  .  .  | .  .  .  | . . .
            ---------+----------+------
            .  .  .  | .  .  .  | . . .
            .  .  .  | .  .  .  | . . .
            .  .  .  | .  .  .  | . 12 .
            """),
        new Found("xy-chain 1234 chainend r1c1 chain r1c5 r4c5 r4c8 chainend r9c8", """
            . . . | . . . | . 1 .
            . . . | . . . | . . .
            . . . | . . . | . . .
            ------+-------+------
            . . . | . . . | . . .
            . . . | . . . | . . .
            . . . | . . . | . . .
            ------+-------+------
            . . . | . . . | . . .
            . . . | . . . | . . .
            1 . . | . . . | . . .
            """)
        {
            Links = "r1c1=1 = r1c1=2, r1c1=2 - r1c5=2, r1c5=2 = r1c5=3, r1c5=3 - r4c5=3, r4c5=3 = r4c5=4, r4c5=4 - r4c8=4, "
                + "r4c8=4 = r4c8=2, r4c8=2 - r9c8=2, r9c8=2 = r9c8=1",
        });

    [Fact]
    public void Three_cells_are_left_to_XY_wing() => RuleCheck.FindsNothing(
        new XYChain(),
        Drawing.Board("""
            12 .  .  | .  23 .  | . . .
            .  .  .  | .  .  .  | . . .
            .  .  .  | .  .  .  | . . .
            ---------+----------+------
            .  .  .  | .  .  .  | . . .
            13 .  .  | .  .  .  | . . .
            """));

    [Fact]
    public void A_cell_with_three_candidates_breaks_the_chain() => RuleCheck.FindsNothing(
        new XYChain(),
        Drawing.Board("""
            12 .  .  | .  23  .  | . . .
            .  .  .  | .  .   .  | . . .
            .  .  .  | .  .   .  | . . .
            ---------+-----------+------
            .  14 .  | .  345 .  | . . .
            """));

    [Fact]
    public void Nothing_counts_where_the_ends_have_no_digit_in_common() => RuleCheck.FindsNothing(
        new XYChain(),
        Drawing.Board("""
            12 .  .  | .  23 .  | . . .
            .  .  .  | .  .  .  | . . .
            .  .  .  | .  .  .  | . . .
            ---------+----------+------
            .  45 .  | .  34 .  | . . .
            """));
}
