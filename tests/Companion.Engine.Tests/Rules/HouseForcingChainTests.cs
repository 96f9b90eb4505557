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
            .  .  .  | .  .  79 | .  .  57
            """),
        new Found("house-forcing-chain 579 start r1c1 r1c5 r1c9 in r1", """
            . . . | . . . | . . .
            . . . | . . . | . . .
            . . . | . . . | . . .
            ------+-------+------
            . . . | . . 9 | . . .
            """));

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
            .  .  .  | .  .  79 | . .  57
            """));
}
