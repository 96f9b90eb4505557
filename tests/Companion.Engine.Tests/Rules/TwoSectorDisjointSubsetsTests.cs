using Companion.Engine.Rules;

namespace Companion.Engine.Tests.Rules;

public sealed class TwoSectorDisjointSubsetsTests
{
    [Fact]
    public void Each_digit_goes_from_the_rest_of_the_house_that_it_is_kept_to() => RuleCheck.Finds(
        new TwoSectorDisjointSubsets(),
        Drawing.Board("""
            .    .  .    | . .  . | . . .
            .    34 .    | . .  . | . . .
            1234 .  1234 | . 12 . | . . .
            """),
        new Found("two-sector-disjoint-subsets 1234 pivot r3c1 r3c3 pincer r3c5 r2c2 in r3 b1", """
            34 34   34 | .  . .  | .  .  .
            34 .    34 | .  . .  | .  .  .
            .  1234 .  | 12 . 12 | 12 12 12
            """)
        {
            RestsOn = """
            .     .       .     | . .       . | . . .
            .     1256789 .     | . .       . | . . .
            56789 .       56789 | . 3456789 . | . . .
            """,
            Links = "",
        });

    [Fact]
    public void A_digit_of_the_crossing_alone_goes_from_the_rests_of_both() => RuleCheck.Finds(
        new TwoSectorDisjointSubsets(),
        Drawing.Board("""
            .   .   .   | . .  . | . . .
            34  .   .   | . .  . | . . .
            125 345 135 | . 12 . | . . .
            """),
        new Found("two-sector-disjoint-subsets 12345 pivot r3c1 r3c2 r3c3 pincer r3c5 r2c1 in r3 b1", """
            345 345 345 | .   . .   | .   .   .
            .   345 345 | .   . .   | .   .   .
            .   .   .   | 125 . 125 | 125 125 125
            """)
        {
            RestsOn = """
            .       .    .    | . .       . | . . .
            1256789 .    .    | . .       . | . . .
            6789    6789 6789 | . 3456789 . | . . .
            """,
            Links = "",
        });

    [Fact]
    public void Three_cells_of_the_crossing_may_take_three_more_digits() => RuleCheck.Finds(
        new TwoSectorDisjointSubsets(),
        Drawing.Board("""
            34   .    .    | . .  . | . . .
            .    45   .    | . .  . | . . .
            1256 3456 1346 | . 12 . | . . .
            """),
        new Found("two-sector-disjoint-subsets 123456 pivot r3c1 r3c2 r3c3 pincer r3c5 r1c1 r2c2 in r3 b1", """
            .    3456 3456 | .   . .   | .   .   .
            3456 .    3456 | .   . .   | .   .   .
            .    .    .    | 126 . 126 | 126 126 126
            """));

    [Fact]
    public void A_digit_in_both_rests_keeps_nothing_together() => RuleCheck.FindsNothing(
        new TwoSectorDisjointSubsets(),
        Drawing.Board("""
            .    .  .    | . .  . | . . .
            .    23 .    | . .  . | . . .
            1234 .  1234 | . 12 . | . . .
            """));

    [Fact]
    public void Cells_of_one_house_are_left_to_naked_quad() => RuleCheck.FindsNothing(
        new TwoSectorDisjointSubsets(),
        Drawing.Board("""
            .    .  .    | . . .  | . .  .
            .    .  .    | . . .  | . .  .
            1234 .  1234 | . 12 . | . 34 .
            """));

    [Fact]
    public void A_pair_within_it_is_left_to_naked_pair() => RuleCheck.FindsNothing(
        new TwoSectorDisjointSubsets(),
        Drawing.Board("""
            .  .  .    | . .  . | . . .
            .  34 .    | . .  . | . . .
            12 .  1234 | . 12 . | . . .
            """));
}
