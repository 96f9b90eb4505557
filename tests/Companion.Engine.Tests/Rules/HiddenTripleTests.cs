using Companion.Engine.Rules;

namespace Companion.Engine.Tests.Rules;

public sealed class HiddenTripleTests
{
    [Fact]
    public void Three_digits_with_three_places_between_them_in_a_row_clear_them_of_the_rest() => RuleCheck.Finds(
        new HiddenTriple(),
        Drawing.Board("""
            -3 -123 -123 | -1 -123 -123 | -123 -2 -123
            """),
        new Found("hidden-triple 123 subset r1c1 r1c4 r1c8 in r1", """
            456789 . . | 456789 . . | . 456789 .
            """)
        {
            RestsOn = """
            . 123 123 | . 123 123 | 123 . 123
            """,
        });

    [Fact]
    public void Three_digits_in_all_three_places_of_a_block_count_too() => RuleCheck.Finds(
        new HiddenTriple(),
        Drawing.Board("""
            .    .    -179 | . . . | . . .
            -179 -179 -179 | . . . | . . .
            -179 .    -179 | . . . | . . .
            """),
        new Found("hidden-triple 179 subset r1c1 r1c2 r3c2 in b1", """
            234568 234568 . | . . . | . . .
            .      .      . | . . . | . . .
            .      234568 . | . . . | . . .
            """));

    [Fact]
    public void A_hidden_pair_with_a_third_digit_is_no_triple() => RuleCheck.FindsNothing(
        new HiddenTriple(),
        Drawing.Board("""
            . . -12 | -123 -123 -123 | -123 -123 -123
            """));

    [Fact]
    public void Three_digits_with_four_places_are_no_triple() => RuleCheck.FindsNothing(
        new HiddenTriple(),
        Drawing.Board("""
            -3 -1 -2 | -12 -123 -123 | -123 -123 -123
            """));
}
