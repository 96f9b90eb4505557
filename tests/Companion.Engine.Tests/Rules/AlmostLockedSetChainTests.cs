using Companion.Engine.Rules;

namespace Companion.Engine.Tests.Rules;

public sealed class AlmostLockedSetChainTests
{
    [Fact]
    public void A_set_may_be_a_step_of_a_chain() => RuleCheck.Finds(
        new AlmostLockedSetChain(),
        Drawing.Board("""
            . -5 -5 | -5 -5 -5 | -5 .   -5
            . .  .  | .  .  .  | .  .   .
            . .  .  | .  .  .  | .  .   .
            --------+----------+----------
            . .  .  | .  .  .  | .  567 .
            . .  59 | .  .  .  | 79 .   .
            . .  .  | .  .  .  | .  67  .
            """),
        new Found("almost-locked-set-chain 5679 chainend r1c1 chain r1c8 set r4c8 r5c7 r6c8 chainend r5c3 sets r4c8+r5c7+r6c8 in r1", """
            . . . | . . . | . . .
            . . 5 | . . . | . . .
            . . 5 | . . . | . . .
            ------+-------+------
            5 . . | . . . | . . .
            5 . . | . . . | . . .
            5 . . | . . . | . . .
            """)
        {
            Links = "r1c1=5 = r1c8=5, r1c8=5 - r4c8=5, r4c8=5 = r5c7=9, r5c7=9 - r5c3=9, r5c3=9 = r5c3=5",
            RestsOn = """
            . 5 5       | 5 5 5 | 5      .       5
            . . .       | . . . | .      .       .
            . . .       | . . . | .      .       .
            ------------+-------+-----------------
            . . .       | . . . | .      123489  .
            . . 1234678 | . . . | 123458 .       .
            . . .       | . . . | .      1234589 .
            """,
        });

    [Fact]
    public void A_group_and_a_set_may_be_linked() => RuleCheck.Finds(
        new AlmostLockedSetChain(),
        Drawing.Board("""
            . -5 -5 | -5 -5 -5 | . . -5
            . .  .  | .  .  .  | . . 567
            . .  .  | .  .  .  | . . 67
            --------+----------+--------
            . .  .  | .  .  .  | . . .
            . .  .  | .  .  .  | . . .
            . .  .  | .  .  .  | . . .
            --------+----------+--------
            . .  .  | .  .  .  | . . .
            . .  .  | 59 .  .  | . . 79
            """),
        new Found("almost-locked-set-chain 5679 chainend r1c1 chain r1c7 r1c8 set r2c9 r3c9 r8c9 chainend r8c4 sets r2c9+r3c9+r8c9 in r1", """
            . . . | . . . | . . .
            . . . | . . . | . . .
            . . . | . . . | . . .
            ------+-------+------
            . . . | . . . | . . .
            . . . | . . . | . . .
            . . . | . . . | . . .
            ------+-------+------
            . . . | . . . | . . .
            5 . . | . . . | . . .
            """)
        {
            Links = "r1c1=5 = r1c7+r1c8=5, r1c7+r1c8=5 - r2c9=5, r2c9=5 = r8c9=9, r8c9=9 - r8c4=9, r8c4=9 = r8c4=5",
            RestsOn = """
            . 5 5 | 5       5 5 | . . 5
            . . . | .       . . | . . 123489
            . . . | .       . . | . . 1234589
            ------+-------------+------------
            . . . | .       . . | . . .
            . . . | .       . . | . . .
            . . . | .       . . | . . .
            ------+-------------+------------
            . . . | .       . . | . . .
            . . . | 1234678 . . | . . 123458
            """,
        });

    [Fact]
    public void A_third_place_of_the_digit_breaks_the_chain() => RuleCheck.FindsNothing(
        new AlmostLockedSetChain(),
        Drawing.Board("""
            . -5 -5 | -5 . -5 | -5 .   -5
            . .  .  | .  . .  | .  .   .
            . .  .  | .  . .  | .  .   .
            --------+---------+----------
            . .  .  | .  . .  | .  567 .
            . .  59 | .  . .  | 79 .   .
            . .  .  | .  . .  | .  67  .
            """));

    [Fact]
    public void A_chain_that_needs_no_set_is_left_to_grouped_chain() => RuleCheck.FindsNothing(
        new AlmostLockedSetChain(),
        Drawing.Board("""
            . -5 -5 | -5 -5 -5 | -5 .  -5
            . .  .  | .  .  .  | .  .  .
            . .  .  | .  .  .  | .  .  .
            --------+----------+---------
            . .  .  | .  57 .  | .  57 .
            """));
}
