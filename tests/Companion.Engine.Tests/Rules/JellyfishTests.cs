using Companion.Engine.Rules;

namespace Companion.Engine.Tests.Rules;

public sealed class JellyfishTests
{
    [Fact]
    public void Four_rows_with_two_places_each_in_four_columns_clear_the_columns() => RuleCheck.Finds(
        new Jellyfish(),
        Drawing.Board("""
            .  -9 -9 | .  -9 -9 | -9 -9 -9
            .  .  .  | .  .  .  | .  .  .
            .  .  .  | .  .  .  | .  .  .
            ---------+----------+---------
            -9 -9 -9 | .  -9 -9 | -9 .  -9
            .  -9 -9 | -9 -9 .  | -9 -9 -9
            .  .  .  | .  .  .  | .  .  .
            ---------+----------+---------
            -9 -9 -9 | -9 -9 .  | -9 .  -9
            """),
        new Found("jellyfish 9 base r1c1 r1c4 r4c4 r4c8 r5c1 r5c6 r7c6 r7c8 in r1 r4 r5 r7", """
            . . . | . . . | . . .
            9 . . | 9 . 9 | . 9 .
            9 . . | 9 . 9 | . 9 .
            ------+-------+------
            . . . | . . . | . . .
            . . . | . . . | . . .
            9 . . | 9 . 9 | . 9 .
            ------+-------+------
            . . . | . . . | . . .
            9 . . | 9 . 9 | . 9 .
            9 . . | 9 . 9 | . 9 .
            """)
        {
            RestsOn = """
            . 9 9 | . 9 . | 9 . 9
            . . . | . . . | . . .
            . . . | . . . | . . .
            ------+-------+------
            . 9 9 | . 9 . | 9 . 9
            . 9 9 | . 9 . | 9 . 9
            . . . | . . . | . . .
            ------+-------+------
            . 9 9 | . 9 . | 9 . 9
            """,
            Links = "",
        });

    [Fact]
    public void Four_columns_with_up_to_four_places_in_four_rows_clear_the_rows() => RuleCheck.Finds(
        new Jellyfish(),
        Drawing.Board("""
            .  . . | .  . -4 | . .  .
            -4 . . | -4 . -4 | . -4 .
            .  . . | .  . .  | . -4 .
            -------+---------+-------
            -4 . . | -4 . -4 | . -4 .
            .  . . | -4 . .  | . .  .
            -4 . . | -4 . -4 | . -4 .
            -------+---------+-------
            -4 . . | -4 . -4 | . -4 .
            -4 . . | -4 . -4 | . -4 .
            .  . . | .  . .  | . -4 .
            """),
        new Found("jellyfish 4 base r1c1 r3c1 r5c1 r9c1 r1c4 r3c4 r9c4 r3c6 r5c6 r9c6 r1c8 r5c8 in c1 c4 c6 c8", """
            . 4 4 | . 4 . | 4 . 4
            . . . | . . . | . . .
            . 4 4 | . 4 . | 4 . 4
            ------+-------+------
            . . . | . . . | . . .
            . 4 4 | . 4 . | 4 . 4
            . . . | . . . | . . .
            ------+-------+------
            . . . | . . . | . . .
            . . . | . . . | . . .
            . 4 4 | . 4 . | 4 . 4
            """));

    [Fact]
    public void Two_x_wings_are_no_jellyfish() => RuleCheck.FindsNothing(
        new Jellyfish(),
        Drawing.Board("""
            .  -9 -9 | .  -9 -9 | -9 -9 -9
            .  .  .  | .  .  .  | .  .  .
            .  .  .  | .  .  .  | .  .  .
            ---------+----------+---------
            .  -9 -9 | .  -9 -9 | -9 -9 -9
            -9 -9 -9 | -9 -9 .  | -9 .  -9
            .  .  .  | .  .  .  | .  .  .
            ---------+----------+---------
            -9 -9 -9 | -9 -9 .  | -9 .  -9
            """));

    [Fact]
    public void A_swordfish_with_a_fourth_row_is_no_jellyfish() => RuleCheck.FindsNothing(
        new Jellyfish(),
        Drawing.Board("""
            .  -9 -9 | .  -9 -9 | -9 -9 -9
            .  .  .  | .  .  .  | .  .  .
            .  .  .  | .  .  .  | .  .  .
            ---------+----------+---------
            -9 -9 -9 | .  -9 -9 | -9 .  -9
            .  -9 -9 | -9 -9 -9 | -9 .  -9
            .  .  .  | .  .  .  | .  .  .
            ---------+----------+---------
            .  -9 -9 | -9 -9 .  | -9 .  -9
            """));

    [Fact]
    public void Four_rows_with_places_in_five_columns_are_no_jellyfish() => RuleCheck.FindsNothing(
        new Jellyfish(),
        Drawing.Board("""
            .  -9 -9 | .  -9 -9 | -9 -9 -9
            .  .  .  | .  .  .  | .  .  .
            .  .  .  | .  .  .  | .  .  .
            ---------+----------+---------
            -9 -9 -9 | .  -9 -9 | -9 .  -9
            .  -9 -9 | -9 -9 .  | -9 -9 -9
            .  .  .  | .  .  .  | .  .  .
            ---------+----------+---------
            -9 -9 -9 | -9 -9 .  | -9 -9 .
            """));
}
