using Companion.Engine.Rules;

namespace Companion.Engine.Tests.Rules;

public sealed class SwordfishTests
{
    [Fact]
    public void Three_rows_with_two_places_each_in_three_columns_clear_the_columns() => RuleCheck.Finds(
        new Swordfish(),
        Drawing.Board("""
            -6 .  -6 | .  -6 -6 | -6 -6 -6
            .  .  .  | .  .  .  | .  .  .
            -6 -6 -6 | .  -6 -6 | .  -6 -6
            ---------+----------+---------
            .  .  .  | .  .  .  | .  .  .
            -6 .  -6 | -6 -6 -6 | .  -6 -6
            """),
        new Found("swordfish 6 base r1c2 r1c4 r3c4 r3c7 r5c2 r5c7 in r1 r3 r5", """
            . . . | . . . | . . .
            . 6 . | 6 . . | 6 . .
            . . . | . . . | . . .
            ------+-------+------
            . 6 . | 6 . . | 6 . .
            . . . | . . . | . . .
            . 6 . | 6 . . | 6 . .
            ------+-------+------
            . 6 . | 6 . . | 6 . .
            . 6 . | 6 . . | 6 . .
            . 6 . | 6 . . | 6 . .
            """)
        {
            RestsOn = """
            6 . 6 | . 6 6 | . 6 6
            . . . | . . . | . . .
            6 . 6 | . 6 6 | . 6 6
            ------+-------+------
            . . . | . . . | . . .
            6 . 6 | . 6 6 | . 6 6
            """,
            Links = "",
        });

    [Fact]
    public void Three_columns_with_up_to_three_places_in_three_rows_clear_the_rows() => RuleCheck.Finds(
        new Swordfish(),
        Drawing.Board("""
            .  . . | .  . . | . .  .
            -2 . . | -2 . . | . -2 .
            -2 . . | -2 . . | . -2 .
            -------+--------+-------
            -2 . . | -2 . . | . -2 .
            .  . . | .  . . | . .  .
            -2 . . | -2 . . | . -2 .
            -------+--------+-------
            -2 . . | -2 . . | . -2 .
            -2 . . | -2 . . | . -2 .
            .  . . | .  . . | . -2 .
            """),
        new Found("swordfish 2 base r1c1 r5c1 r9c1 r1c4 r5c4 r9c4 r1c8 r5c8 in c1 c4 c8", """
            . 2 2 | . 2 2 | 2 . 2
            . . . | . . . | . . .
            . . . | . . . | . . .
            ------+-------+------
            . . . | . . . | . . .
            . 2 2 | . 2 2 | 2 . 2
            . . . | . . . | . . .
            ------+-------+------
            . . . | . . . | . . .
            . . . | . . . | . . .
            . 2 2 | . 2 2 | 2 . 2
            """));

    [Fact]
    public void An_x_wing_with_a_third_row_is_no_swordfish() => RuleCheck.FindsNothing(
        new Swordfish(),
        Drawing.Board("""
            -6 . -6 | . -6 -6 | -6 -6 -6
            .  . .  | . .  .  | .  .  .
            -6 . -6 | . -6 -6 | -6 -6 -6
            --------+---------+---------
            .  . .  | . .  .  | .  .  .
            -6 . -6 | . -6 -6 | .  -6 -6
            """));

    [Fact]
    public void Three_rows_with_places_in_four_columns_are_no_swordfish() => RuleCheck.FindsNothing(
        new Swordfish(),
        Drawing.Board("""
            -6 .  -6 | .  -6 -6 | -6 -6 -6
            .  .  .  | .  .  .  | .  .  .
            -6 -6 -6 | .  -6 -6 | .  -6 -6
            ---------+----------+---------
            .  .  .  | .  .  .  | .  .  .
            -6 .  -6 | -6 -6 -6 | -6 .  -6
            """));

    [Fact]
    public void A_row_with_one_place_is_left_to_hidden_single() => RuleCheck.FindsNothing(
        new Swordfish(),
        Drawing.Board("""
            -6 .  -6 | .  -6 -6 | -6 -6 -6
            .  .  .  | .  .  .  | .  .  .
            -6 -6 -6 | .  -6 -6 | .  -6 -6
            ---------+----------+---------
            .  .  .  | .  .  .  | .  .  .
            -6 .  -6 | -6 -6 -6 | -6 -6 -6
            """));
}
