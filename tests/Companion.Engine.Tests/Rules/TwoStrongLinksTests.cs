using Companion.Engine.Rules;

namespace Companion.Engine.Tests.Rules;

public sealed class TwoStrongLinksTests
{
    [Fact]
    public void Two_columns_with_two_places_each_of_which_two_share_a_row_clear_what_both_ends_see() => RuleCheck.Finds(
        new TwoStrongLinks(),
        Drawing.Board("""
            . . .  | . . . | -6 . .
            . . -6 | . . . | -6 . .
            . . -6 | . . . | .  . .
            -------+-------+-------
            . . -6 | . . . | -6 . .
            . . .  | . . . | .  . .
            . . -6 | . . . | -6 . .
            -------+-------+-------
            . . -6 | . . . | -6 . .
            . . -6 | . . . | -6 . .
            . . -6 | . . . | -6 . .
            """),
        new Found("two-strong-links 6 end r1c3 between r5c3 r5c7 end r3c7 in c3 c7", """
            . . . | . . . | . 6 6
            . . . | . . . | . . .
            6 6 . | . . . | . . .
            """)
        {
            RestsOn = """
            . . . | . . . | 6 . .
            . . 6 | . . . | 6 . .
            . . 6 | . . . | . . .
            ------+-------+------
            . . 6 | . . . | 6 . .
            . . . | . . . | . . .
            . . 6 | . . . | 6 . .
            ------+-------+------
            . . 6 | . . . | 6 . .
            . . 6 | . . . | 6 . .
            . . 6 | . . . | 6 . .
            """,
            Links = "r1c3=6 = r5c3=6, r5c3=6 - r5c7=6, r3c7=6 = r5c7=6",
        });

    [Fact]
    public void A_row_and_a_column_may_meet_in_a_block() => RuleCheck.Finds(
        new TwoStrongLinks(),
        Drawing.Board("""
            -6 -6 -6 | .  -6 -6 | -6 . -6
            .  .  .  | .  .  .  | .  . -6
            .  .  .  | .  .  .  | .  . .
            ---------+----------+--------
            .  .  .  | .  .  .  | .  . -6
            .  .  .  | .  .  .  | .  . -6
            .  .  .  | .  .  .  | .  . .
            ---------+----------+--------
            .  .  .  | .  .  .  | .  . -6
            .  .  .  | .  .  .  | .  . -6
            .  .  .  | .  .  .  | .  . -6
            """),
        new Found("two-strong-links 6 end r1c4 between r1c8 r3c9 end r6c9 in r1 c9", """
            . . . | . . . | . . .
            . . . | . . . | . . .
            . . . | . . . | . . .
            ------+-------+------
            . . . | . . . | . . .
            . . . | . . . | . . .
            . . . | 6 . . | . . .
            """));

    [Fact]
    public void A_block_with_two_places_is_a_link_too() => RuleCheck.Finds(
        new TwoStrongLinks(),
        Drawing.Board("""
            -6 -6 .  | .  .  .  | .  . .
            -6 .  -6 | .  .  .  | .  . .
            -6 -6 -6 | .  .  .  | .  . .
            ---------+----------+-------
            .  .  .  | .  .  .  | .  . .
            -6 .  -6 | -6 -6 -6 | -6 . -6
            """),
        new Found("two-strong-links 6 end r5c8 between r5c2 r2c2 end r1c3 in r5 b1", """
            . . . | . . . | . 6 .
            """));

    [Fact]
    public void Four_corners_of_a_rectangle_are_left_to_x_wing() => RuleCheck.FindsNothing(
        new TwoStrongLinks(),
        Drawing.Board("""
            -6 -6 . | -6 -6 -6 | . -6 -6
            .  .  . | .  .  .  | . .  .
            .  .  . | .  .  .  | . .  .
            --------+----------+--------
            -6 -6 . | -6 -6 -6 | . -6 -6
            """));

    [Fact]
    public void A_third_place_in_a_column_spoils_it() => RuleCheck.FindsNothing(
        new TwoStrongLinks(),
        Drawing.Board("""
            . . .  | . . . | -6 . .
            . . -6 | . . . | -6 . .
            . . -6 | . . . | .  . .
            -------+-------+-------
            . . -6 | . . . | -6 . .
            . . .  | . . . | .  . .
            . . -6 | . . . | .  . .
            -------+-------+-------
            . . -6 | . . . | -6 . .
            . . -6 | . . . | -6 . .
            . . -6 | . . . | -6 . .
            """));
}
