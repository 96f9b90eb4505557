using Companion.Engine.Rules;

namespace Companion.Engine.Tests.Rules;

public sealed class SingleDigitChainTests
{
    [Fact]
    public void Three_strong_links_in_a_row_clear_what_sees_both_ends() => RuleCheck.Finds(
        new SingleDigitChain(),
        Drawing.Board("""
            .  -5 -5 | -5 .  -5 | -5 -5 -5
            .  .  .  | .  .  .  | .  .  .
            .  .  .  | .  .  .  | .  .  .
            ---------+----------+---------
            -5 -5 -5 | -5 .  -5 | -5 .  -5
            .  .  .  | .  .  .  | .  .  .
            .  .  .  | .  .  .  | .  .  .
            ---------+----------+---------
            .  .  .  | .  .  .  | .  .  .
            .  .  .  | .  .  .  | .  .  .
            -5 -5 .  | -5 -5 -5 | -5 .  -5
            """),
        new Found("single-digit-chain 5 chainend r1c1 chain r1c5 r4c5 r4c8 r9c8 chainend r9c3 in r1 r4 r9", """
            . . . | . . . | . . .
            . . 5 | . . . | . . .
            . . 5 | . . . | . . .
            ------+-------+------
            . . . | . . . | . . .
            . . . | . . . | . . .
            . . . | . . . | . . .
            ------+-------+------
            5 . . | . . . | . . .
            5 . . | . . . | . . .
            """)
        {
            Links = "r1c1=5 = r1c5=5, r1c5=5 - r4c5=5, r4c5=5 = r4c8=5, r4c8=5 - r9c8=5, r9c8=5 = r9c3=5",
            RestsOn = """
            . 5 5 | 5 . 5 | 5 5 5
            . . . | . . . | . . .
            . . . | . . . | . . .
            ------+-------+------
            5 5 5 | 5 . 5 | 5 . 5
            . . . | . . . | . . .
            . . . | . . . | . . .
            ------+-------+------
            . . . | . . . | . . .
            . . . | . . . | . . .
            5 5 . | 5 5 5 | 5 . 5
            """,
        });

    [Fact]
    public void A_chain_that_ends_where_it_begins_places_the_digit() => RuleCheck.Finds(
        new SingleDigitChain(),
        Drawing.Board("""
            .  -5 -5 | -5 .  -5 | -5 -5 -5
            -5 .  .  | .  .  .  | .  .  .
            -5 .  .  | .  .  .  | .  .  .
            ---------+----------+---------
            -5 .  -5 | -5 .  -5 | -5 -5 -5
            .  .  .  | .  .  .  | .  .  .
            -5 .  .  | .  .  .  | .  .  .
            ---------+----------+---------
            -5 .  .  | .  .  .  | .  .  .
            -5 .  .  | .  .  .  | .  .  .
            -5 .  .  | .  .  .  | .  .  .
            """),
        new Found("single-digit-chain 5 chainend r1c1 chain r5c1 r4c2 r4c5 r1c5 in r1 r4 c1", """
            =5 . . | . . . | . . .
            """)
        {
            Links = "r1c1=5 = r5c1=5, r5c1=5 - r4c2=5, r4c2=5 = r4c5=5, r4c5=5 - r1c5=5, r1c5=5 = r1c1=5",
        });

    [Fact]
    public void A_block_may_be_a_house_of_the_chain() => RuleCheck.Finds(
        new SingleDigitChain(),
        Drawing.Board("""
            .  -5 -5 | -5 .  -5 | -5 -5 -5
            .  .  .  | .  .  .  | -5 .  .
            .  .  .  | .  .  .  | -5 .  .
            ---------+----------+---------
            .  .  .  | -5 .  -5 | -5 .  .
            .  .  .  | -5 -5 .  | .  .  .
            .  .  .  | -5 -5 -5 | -5 .  .
            ---------+----------+---------
            .  .  .  | .  .  .  | -5 .  .
            .  .  .  | .  .  .  | -5 .  .
            .  .  .  | .  .  .  | .  .  .
            """),
        new Found("single-digit-chain 5 chainend r1c1 chain r1c5 r4c5 r5c6 r5c7 chainend r9c7 in r1 c7 b5", """
            . . . | . . . | . . .
            . . . | . . . | . . .
            . . . | . . . | . . .
            ------+-------+------
            . . . | . . . | . . .
            . . . | . . . | . . .
            . . . | . . . | . . .
            ------+-------+------
            . . . | . . . | . . .
            . . . | . . . | . . .
            5 . . | . . . | . . .
            """)
        {
            Links = "r1c1=5 = r1c5=5, r1c5=5 - r4c5=5, r4c5=5 = r5c6=5, r5c6=5 - r5c7=5, r5c7=5 = r9c7=5",
        });

    [Fact]
    public void Two_strong_links_are_left_to_easier_rules() => RuleCheck.FindsNothing(
        new SingleDigitChain(),
        Drawing.Board("""
            .  -5 -5 | -5 .  -5 | -5 -5 -5
            .  .  .  | .  .  .  | .  .  .
            .  .  .  | .  .  .  | .  .  .
            ---------+----------+---------
            -5 -5 -5 | -5 .  -5 | -5 .  -5
            """));

    [Fact]
    public void A_third_place_in_a_house_breaks_the_chain() => RuleCheck.FindsNothing(
        new SingleDigitChain(),
        Drawing.Board("""
            .  -5 -5 | -5 .  -5 | -5 -5 -5
            .  .  .  | .  .  .  | .  .  .
            .  .  .  | .  .  .  | .  .  .
            ---------+----------+---------
            -5 -5 -5 | -5 .  .  | -5 .  -5
            .  .  .  | .  .  .  | .  .  .
            .  .  .  | .  .  .  | .  .  .
            ---------+----------+---------
            .  .  .  | .  .  .  | .  .  .
            .  .  .  | .  .  .  | .  .  .
            -5 -5 .  | -5 -5 -5 | -5 .  -5
            """));

    [Fact]
    public void A_chain_of_two_digits_is_none() => RuleCheck.FindsNothing(
        new SingleDigitChain(),
        Drawing.Board("""
            .  -5 -5 | -5 .  -5 | -5 -5 -5
            .  .  .  | .  .  .  | .  .  .
            .  .  .  | .  .  .  | .  .  .
            ---------+----------+---------
            -6 -6 -6 | -6 .  -6 | -6 .  -6
            .  .  .  | .  .  .  | .  .  .
            .  .  .  | .  .  .  | .  .  .
            ---------+----------+---------
            .  .  .  | .  .  .  | .  .  .
            .  .  .  | .  .  .  | .  .  .
            -5 -5 .  | -5 -5 -5 | -5 .  -5
            """));
}
