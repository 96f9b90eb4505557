using Companion.Engine.Rules;

namespace Companion.Engine.Tests.Rules;

public sealed class HiddenQuadTests
{
    [Fact]
    public void Four_digits_with_four_places_between_them_in_a_row_clear_them_of_the_rest() => RuleCheck.Finds(
        new HiddenQuad(),
        Drawing.Board("""
            -34 -1234 -14 | -1234 -12 -1234 | -23 -1234 -1234
            """),
        new Found("hidden-quad 1234 subset r1c1 r1c3 r1c5 r1c7 in r1", """
            56789 . 56789 | . 56789 . | 56789 . .
            """)
        {
            RestsOn = """
            . 1234 . | 1234 . 1234 | . 1234 1234
            """,
        });

    [Fact]
    public void Two_hidden_pairs_are_no_quad() => RuleCheck.FindsNothing(
        new HiddenQuad(),
        Drawing.Board("""
            -34 -1234 -34 | -1234 -12 -1234 | -12 -1234 -1234
            """));

    [Fact]
    public void A_hidden_triple_with_a_fourth_digit_is_no_quad() => RuleCheck.FindsNothing(
        new HiddenQuad(),
        Drawing.Board("""
            -34 -14 -24 | -123 -1234 -1234 | -1234 -1234 -1234
            """));

    [Fact]
    public void Four_digits_with_five_places_are_no_quad() => RuleCheck.FindsNothing(
        new HiddenQuad(),
        Drawing.Board("""
            -34 -1234 -14 | -1234 -12 -1234 | -23 -123 -1234
            """));
}
