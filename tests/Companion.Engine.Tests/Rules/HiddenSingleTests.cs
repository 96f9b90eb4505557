using Companion.Engine.Rules;

namespace Companion.Engine.Tests.Rules;

public sealed class HiddenSingleTests
{
    [Fact]
    public void A_digit_with_one_place_in_a_block_and_in_a_row_counts_for_each_the_block_first() => RuleCheck.Finds(
        new HiddenSingle(),
        Drawing.Board("""
            .  . .  | =5 . . | . .  .
            .  . .  | .  . . | . =5 .
            =2 . .  | .  . . | . .  .
            --------+--------+-------
            .  . =5 | .  . . | . .  .
            """),
        new Found("hidden-single 5 single r3c2 in b1", """
            . .  . | . . . | . . .
            . .  . | . . . | . . .
            . =5 . | . . . | . . .
            """)
        {
            RestsOn = """
            5 5  5 | . . . | . . .
            5 5  5 | . . . | . . .
            . .  5 | . . . | . . .
            """,
        },
        new Found("hidden-single 5 single r3c2 in r3", """
            . .  . | . . . | . . .
            . .  . | . . . | . . .
            . =5 . | . . . | . . .
            """)
        {
            RestsOn = """
            . . . | . . . | . . .
            . . . | . . . | . . .
            . . 5 | 5 5 5 | 5 5 5
            """,
        });

    [Fact]
    public void A_digit_with_one_place_in_a_column_is_placed_there() => RuleCheck.Finds(
        new HiddenSingle(),
        Drawing.Board("""
            . . . | . -7 . | . . .
            . . . | . -7 . | . . .
            . . . | . -7 . | . . .
            ------+--------+------
            . . . | . -7 . | . . .
            . . . | . .  . | . . .
            . . . | . -7 . | . . .
            ------+--------+------
            . . . | . -7 . | . . .
            . . . | . -7 . | . . .
            . . . | . -7 . | . . .
            """),
        new Found("hidden-single 7 single r5c5 in c5", """
            . . . | . .  . | . . .
            . . . | . .  . | . . .
            . . . | . .  . | . . .
            ------+--------+------
            . . . | . .  . | . . .
            . . . | . =7 . | . . .
            """));

    [Fact]
    public void Two_digits_alone_in_the_same_cell_of_a_broken_board_are_both_found() => RuleCheck.Finds(
        new HiddenSingle(),
        Drawing.Board("""
            .   -12 -12 | . . . | . . .
            -12 -12 -12 | . . . | . . .
            -12 -12 -12 | . . . | . . .
            """),
        new Found("hidden-single 1 single r1c1 in b1", """
            =1 . . | . . . | . . .
            """),
        new Found("hidden-single 2 single r1c1 in b1", """
            =2 . . | . . . | . . .
            """));

    [Fact]
    public void The_last_open_cell_of_a_house_is_left_to_full_house() => RuleCheck.FindsNothing(
        new HiddenSingle(),
        Drawing.Board("""
            =1 =2 =3 | . . . | . . .
            =4 =5 =6 | . . . | . . .
            =7 =8 .  | . . . | . . .
            """));

    [Fact]
    public void Two_places_are_no_hidden_single() => RuleCheck.FindsNothing(
        new HiddenSingle(),
        Drawing.Board("""
            .  .  -5 | . . . | . . .
            -5 -5 -5 | . . . | . . .
            -5 -5 -5 | . . . | . . .
            """));
}
