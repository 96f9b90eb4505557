using Companion.Engine.Rules;

namespace Companion.Engine.Tests.Rules;

public sealed class WWingTests
{
    [Fact]
    public void Equal_pairs_joined_by_a_row_with_two_places_for_one_digit_clear_the_other_one() => RuleCheck.Finds(
        new WWing(),
        Drawing.Board("""
            .  .  .  | .  .  .  | .  .  .
            .  58 .  | .  .  .  | .  .  .
            .  .  .  | .  .  .  | .  58 .
            ---------+----------+---------
            .  .  .  | .  .  .  | .  .  .
            .  .  .  | .  .  .  | .  .  .
            .  .  .  | .  .  .  | .  .  .
            ---------+----------+---------
            -5 .  -5 | -5 -5 -5 | -5 .  -5
            """),
        new Found("w-wing 58 end r2c2 between r7c2 r7c8 end r3c8 in r7", """
            . . . | . . . | . . .
            . . . | . . . | 8 8 8
            8 8 8 | . . . | . . .
            """)
        {
            RestsOn = """
            . .       . | . . . | . .       .
            . 1234679 . | . . . | . .       .
            . .       . | . . . | . 1234679 .
            ------------+-------+------------
            . .       . | . . . | . .       .
            . .       . | . . . | . .       .
            . .       . | . . . | . .       .
            ------------+-------+------------
            5 .       5 | 5 5 5 | 5 .       5
            """,
            Links = "r2c2=5 - r7c2=5, r7c2=5 = r7c8=5, r7c8=5 - r3c8=5",
        });

    [Fact]
    public void The_link_may_lie_in_a_block_and_cross_over() => RuleCheck.Finds(
        new WWing(),
        Drawing.Board("""
            .  .  .  | .  .  .  | .  .  .
            .  .  .  | .  .  .  | .  .  .
            .  .  .  | .  .  58 | .  .  .
            ---------+----------+---------
            .  .  .  | -8 -8 -8 | .  .  .
            58 .  .  | .  -8 -8 | .  .  .
            .  .  .  | -8 -8 .  | .  .  .
            """),
        new Found("w-wing 58 end r3c6 between r6c6 r5c4 end r5c1 in b5", """
            . . . | . . . | . . .
            . . . | . . . | . . .
            5 . . | . . . | . . .
            ------+-------+------
            . . . | . . . | . . .
            . . . | . . 5 | . . .
            """));

    [Fact]
    public void Cells_that_see_each_other_are_left_to_naked_pair() => RuleCheck.FindsNothing(
        new WWing(),
        Drawing.Board("""
            .  .  .  | .  .  .  | .  .  .
            .  58 .  | .  .  .  | .  58 .
            .  .  .  | .  .  .  | .  .  .
            ---------+----------+---------
            .  .  .  | .  .  .  | .  .  .
            .  .  .  | .  .  .  | .  .  .
            .  .  .  | .  .  .  | .  .  .
            ---------+----------+---------
            -5 .  -5 | -5 -5 -5 | -5 .  -5
            """));

    [Fact]
    public void A_third_place_in_the_row_spoils_it() => RuleCheck.FindsNothing(
        new WWing(),
        Drawing.Board("""
            .  .  .  | .  .  .  | .  .  .
            .  58 .  | .  .  .  | .  .  .
            .  .  .  | .  .  .  | .  58 .
            ---------+----------+---------
            .  .  .  | .  .  .  | .  .  .
            .  .  .  | .  .  .  | .  .  .
            .  .  .  | .  .  .  | .  .  .
            ---------+----------+---------
            -5 .  .  | -5 -5 -5 | -5 .  -5
            """));

    [Fact]
    public void Pairs_that_differ_in_a_digit_are_no_w_wing() => RuleCheck.FindsNothing(
        new WWing(),
        Drawing.Board("""
            .  .  .  | .  .  .  | .  .  .
            .  58 .  | .  .  .  | .  .  .
            .  .  .  | .  .  .  | .  59 .
            ---------+----------+---------
            .  .  .  | .  .  .  | .  .  .
            .  .  .  | .  .  .  | .  .  .
            .  .  .  | .  .  .  | .  .  .
            ---------+----------+---------
            -5 .  -5 | -5 -5 -5 | -5 .  -5
            """));
}
