using Companion.Engine.Rules;

namespace Companion.Engine.Tests.Rules;

public sealed class HiddenPairTests
{
    [Fact]
    public void Two_digits_with_the_same_two_places_in_a_block_clear_them_of_the_rest() => RuleCheck.Finds(
        new HiddenPair(),
        Drawing.Board("""
            .   -58 -58 | . . . | . . .
            -58 -58 .   | . . . | . . .
            -58 -58 -58 | . . . | . . .
            """),
        new Found("hidden-pair 58 subset r1c1 r2c3 in b1", """
            1234679 . .       | . . . | . . .
            .       . 1234679 | . . . | . . .
            """)
        {
            RestsOn = """
            .  58 58 | . . . | . . .
            58 58 .  | . . . | . . .
            58 58 58 | . . . | . . .
            """,
        });

    [Fact]
    public void A_pair_hidden_in_a_row_and_in_a_block_counts_for_each() => RuleCheck.Finds(
        new HiddenPair(),
        Drawing.Board("""
            358 589 -58 | -58 -58 -58 | -58 -58 -58
            -58 -58 -58 | .   .   .   | .   .   .
            -58 -58 -58 | .   .   .   | .   .   .
            """),
        new Found("hidden-pair 58 subset r1c1 r1c2 in r1", """
            3 9 . | . . . | . . .
            """)
        {
            RestsOn = """
            . . 58 | 58 58 58 | 58 58 58
            """,
        },
        new Found("hidden-pair 58 subset r1c1 r1c2 in b1", """
            3 9 . | . . . | . . .
            """)
        {
            RestsOn = """
            .  .  58 | . . . | . . .
            58 58 58 | . . . | . . .
            58 58 58 | . . . | . . .
            """,
        });

    [Fact]
    public void Filled_cells_of_the_house_are_seen_and_not_rested_on() => RuleCheck.Finds(
        new HiddenPair(),
        Drawing.Board("""
            .   =1  =2  | . . . | . . .
            =3  -58 .   | . . . | . . .
            -58 =4  -58 | . . . | . . .
            """),
        new Found("hidden-pair 58 subset r1c1 r2c3 in b1", """
            679 . .   | . . . | . . .
            .   . 679 | . . . | . . .
            """)
        {
            RestsOn = """
            .  . .  | . . . | . . .
            .  58 . | . . . | . . .
            58 . 58 | . . . | . . .
            """,
        });

    [Fact]
    public void Nothing_counts_where_the_two_cells_hold_nothing_else() => RuleCheck.FindsNothing(
        new HiddenPair(),
        Drawing.Board("""
            58  -58 -58 | . . . | . . .
            -58 -58 58  | . . . | . . .
            -58 -58 -58 | . . . | . . .
            """));

    [Fact]
    public void Two_digits_with_three_places_are_no_pair() => RuleCheck.FindsNothing(
        new HiddenPair(),
        Drawing.Board("""
            .   -58 -58 | . . . | . . .
            -58 -58 .   | . . . | . . .
            -58 -58 -5  | . . . | . . .
            """));

    [Fact]
    public void Digits_with_one_place_are_left_to_hidden_single() => RuleCheck.FindsNothing(
        new HiddenPair(),
        Drawing.Board("""
            -8  -58 -58 | . . . | . . .
            -58 -58 -5  | . . . | . . .
            -58 -58 -58 | . . . | . . .
            """));
}
