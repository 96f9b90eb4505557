using Companion.Engine.Rules;

namespace Companion.Engine.Tests.Rules;

public sealed class WXYZWingTests
{
    [Fact]
    public void A_pivot_and_three_pincers_clear_their_free_digit_where_all_its_places_are_seen() => RuleCheck.Finds(
        new WXYZWing(),
        Drawing.Board("""
            14 .  .    | . . . | . .  .
            .  24 .    | . . . | . .  .
            .  .  1234 | . . . | . 34 .
            """),
        new Found("wxyz-wing 1234 pivot r3c3 pincer r1c1 r2c2 r3c8", """
            . . . | . . . | . . .
            . . . | . . . | . . .
            4 4 . | . . . | . . .
            """)
        {
            RestsOn = """
            356789 .      .     | . . . | . .       .
            .      356789 .     | . . . | . .       .
            .      .      56789 | . . . | . 1256789 .
            """,
            Links = "",
        });

    [Fact]
    public void The_pivot_may_lack_the_free_digit_and_then_rests_on_it_only_where_that_would_spare_a_cell() => RuleCheck.Finds(
        new WXYZWing(),
        Drawing.Board("""
            14 .  .   | . . . | . .  .
            .  24 .   | . . . | . .  .
            .  .  123 | . . . | . 34 .
            """),
        new Found("wxyz-wing 1234 pivot r3c3 pincer r1c1 r2c2 r3c8", """
            . . . | . . . | . . .
            . . . | . . . | . . .
            4 4 . | . . . | . . .
            """)
        {
            RestsOn = """
            356789 .      .     | . . . | . .       .
            .      356789 .     | . . . | . .       .
            .      .      56789 | . . . | . 1256789 .
            """,
        });

    [Fact]
    public void Two_cells_that_see_all_others_are_both_pivots() => RuleCheck.Finds(
        new WXYZWing(),
        Drawing.Board("""
            .  .  .   | . . . | . .  .
            .  14 .   | . . . | . .  .
            123 . 134 | . . . | . 24 .
            """),
        new Found("wxyz-wing 1234 pivot r3c1 r3c3 pincer r2c2 r3c8", """
            . . . | . . . | . . .
            . . . | . . . | . . .
            . 4 . | . . . | . . .
            """));

    [Fact]
    public void Four_cells_in_one_house_are_left_to_naked_quad() => RuleCheck.FindsNothing(
        new WXYZWing(),
        Drawing.Board("""
            .  .  .    | . . . | . .  .
            .  .  .    | . . . | . .  .
            14 24 1234 | . . . | . 34 .
            """));

    [Fact]
    public void Two_free_digits_clear_nothing() => RuleCheck.FindsNothing(
        new WXYZWing(),
        Drawing.Board("""
            14 .  .    | . . . | . .   .
            .  24 .    | . . . | . .   .
            .  .  1234 | . . . | . 134 .
            """));

    [Fact]
    public void Three_of_the_cells_with_three_digits_are_left_to_the_smaller_wings() => RuleCheck.FindsNothing(
        new WXYZWing(),
        Drawing.Board("""
            14 .  .   | . . . | . .  .
            .  24 .   | . . . | . .  .
            .  .  134 | . . . | . 34 .
            """));
}
