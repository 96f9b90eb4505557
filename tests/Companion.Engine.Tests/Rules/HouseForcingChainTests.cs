using Companion.Engine.Rules;

namespace Companion.Engine.Tests.Rules;

public sealed class HouseForcingChainTests
{
    [Fact]
    public void Wherever_the_digit_stands_a_chain_leads_to_the_same_conclusion() => RuleCheck.Finds(
        new HouseForcingChain(),
        Drawing.Board("""
            .  -5 -5 | -5 .  -5 | -5 -5 .
            .  .  .  | .  .  .  | .  .  .
            .  .  .  | .  .  .  | .  .  .
            ---------+----------+--------
            59 .  .  | .  .  .  | .  .  .
            .  .  .  | .  .  .  | .  .  .
            .  .  .  | .  59 .  | .  .  .
            ---------+----------+--------
            .  .  .  | .  .  59 | .  .  .
            -5 -5 -5 | -5 -5 .  | -5 -5 .
            """),
        new Found("house-forcing-chain 59 start r1c1 r1c5 r1c9 chain r4c1 r6c5 r8c6 r8c9 r7c6 in r1 r8", """
            . . . | . . . | . . .
            . . . | . . . | . . .
            . . . | . . . | . . .
            ------+-------+------
            . . . | . . 9 | . . .
            """)
        {
            Links = "r1c1=5 - r4c1=5, r4c1=5 = r4c1=9, r4c1=9 - r4c6=9, r1c5=5 - r6c5=5, r6c5=5 = r6c5=9, r6c5=9 - "
                + "r4c6=9, r1c9=5 - r8c9=5, r8c9=5 = r8c6=5, r8c6=5 - r7c6=5, r7c6=5 = r7c6=9, r7c6=9 - r4c6=9",
            RestsOn = """
            .       5 5 | 5 .       5       | 5 5 .
            .       . . | . .       .       | . . .
            .       . . | . .       .       | . . .
            ------------+-------------------+------
            1234678 . . | . .       .       | . . .
            .       . . | . .       .       | . . .
            .       . . | . 1234678 .       | . . .
            ------------+-------------------+------
            .       . . | . .       1234678 | . . .
            5       5 5 | 5 5       .       | 5 5 .
            """,
        });

    [Fact]
    public void A_chain_may_go_through_an_almost_locked_set() => RuleCheck.Finds(
        new HouseForcingChain(),
        Drawing.Board("""
            .  -5 -5 | -5 .  -5 | -5 -5 .
            .  .  .  | .  .  .  | .  .  .
            .  .  .  | .  .  .  | .  .  .
            ---------+----------+--------
            59 .  .  | .  .  .  | .  .  .
            .  .  .  | .  .  .  | .  .  .
            .  .  .  | .  59 .  | .  .  .
            ---------+----------+--------
            .  .  .  | .  .  79 | .  .  57
            """),
        new Found("house-forcing-chain 579 start r1c1 r1c5 r1c9 chain r4c1 r6c5 set r7c6 r7c9 sets r7c6+r7c9 in r1", """
            . . . | . . . | . . .
            . . . | . . . | . . .
            . . . | . . . | . . .
            ------+-------+------
            . . . | . . 9 | . . .
            """)
        {
            Links = "r1c1=5 - r4c1=5, r4c1=5 = r4c1=9, r4c1=9 - r4c6=9, r1c5=5 - r6c5=5, r6c5=5 = r6c5=9, r6c5=9 - "
                + "r4c6=9, r1c9=5 - r7c9=5, r7c9=5 = r7c6=9, r7c6=9 - r4c6=9",
        });

    [Fact]
    public void A_place_without_a_chain_leaves_all_open() => RuleCheck.FindsNothing(
        new HouseForcingChain(),
        Drawing.Board("""
            .  -5 -5 | -5 .  -5 | . -5 .
            .  .  .  | .  .  .  | . .  .
            .  .  .  | .  .  .  | . .  .
            ---------+----------+-------
            59 .  .  | .  .  .  | . .  .
            .  .  .  | .  .  .  | . .  .
            .  .  .  | .  59 .  | . .  .
            ---------+----------+-------
            .  .  .  | .  .  59 | . .  .
            -5 -5 -5 | -5 -5 .  | -5 -5 .
            """));
}
